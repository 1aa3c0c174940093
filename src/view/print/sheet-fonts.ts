import { FONT_FILES } from '../../drawing/text/font-files.ts';

export type FontBytes = Readonly<Record<400 | 600, Uint8Array<ArrayBuffer>>>;

/** The family of printed sheets. Of still weights: a browser puts a variable font into a PDF as shapes without a name. */
const FAMILY = 'Hanken Grotesk Sheets';

async function load(weight: 400 | 600): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await fetch(FONT_FILES[weight]);
  if (!answer.ok) throw new Error('The font of the sheets could not be loaded.');
  const bytes = await answer.arrayBuffer();
  document.fonts.add(await new FontFace(FAMILY, bytes, { weight: String(weight) }).load());
  return new Uint8Array(bytes);
}

let loading: Promise<FontBytes> | undefined;

/** The outlines for a PDF; from then on the page can set text in them too. Rejects where they cannot be had. */
export function sheetFonts(): Promise<FontBytes> {
  loading ??= Promise.all([load(400), load(600)]).then(([regular, semiBold]) => ({ 400: regular, 600: semiBold }));
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}
