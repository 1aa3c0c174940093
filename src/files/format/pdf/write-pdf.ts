import type { Sheet } from '../../../drawing/sheet/sheet.ts';
import { sayNumber } from '../../../drawing/sheet/sheet-svg.ts';
import { PdfFont } from './pdf-font.ts';
import { latin, type Objects, pdfObjects, spoken } from './pdf-objects.ts';
import { type Fonts, PT_PER_MM, pageContent } from './pdf-page.ts';
import { readTrueType } from './true-type.ts';

export interface PdfChoices {
  readonly title: string;
  /** What wrote it. */
  readonly writer: string;
  /** The one font at its two weights, as TrueType files. */
  readonly fonts: Readonly<Record<400 | 600, Uint8Array>>;
}

const pt = (mm: number): string => (mm * PT_PER_MM).toFixed(4);

/** The list of sheets beside the pages. Gives the number of its object. */
function contentsList(objects: Objects, sheets: readonly Sheet[], pages: readonly number[]): number {
  const list = objects.reserve();
  const rows = sheets.map(() => objects.reserve());
  for (const [i, sheet] of sheets.entries()) {
    const [before, after] = [rows[i - 1], rows[i + 1]];
    const links = `${before ? `/Prev ${before} 0 R ` : ''}${after ? `/Next ${after} 0 R ` : ''}`;
    const title = spoken(`${sheet.number}: ${sheet.head.title}`);
    objects.put(rows[i] ?? 0, `<< /Title ${title} /Parent ${list} 0 R ${links}/Dest [${pages[i]} 0 R /Fit] >>`);
  }
  objects.put(list, `<< /Type /Outlines /First ${rows[0]} 0 R /Last ${rows.at(-1)} 0 R /Count ${rows.length} >>`);
  return list;
}

/**
 * Sheets as one PDF file: lines stay lines, text stays text in the font of the drawing, and a mm is a mm. Readers that
 * heed it print it without fitting. Same sheets, same page contents. Throws where there is no sheet or a font is broken.
 */
export async function writePdf(sheets: readonly Sheet[], choices: PdfChoices): Promise<Uint8Array<ArrayBuffer>> {
  if (sheets.length === 0) throw new Error('there is no sheet to write');
  const objects = pdfObjects();
  const [catalogue, tree, info, resources] = [1, 2, 3, 4].map(() => objects.reserve()) as [
    number,
    number,
    number,
    number,
  ];
  const fonts: Fonts = {
    400: new PdfFont('HankenGrotesk-Regular', readTrueType(choices.fonts[400])),
    600: new PdfFont('HankenGrotesk-SemiBold', readTrueType(choices.fonts[600])),
  };
  const pages = sheets.map(() => objects.reserve());
  for (const [i, sheet] of sheets.entries()) {
    const content = objects.reserve();
    await objects.stream(content, new Uint8Array(latin(pageContent(sheet, fonts))));
    objects.put(
      pages[i] ?? 0,
      `<< /Type /Page /Parent ${tree} 0 R /MediaBox [0 0 ${pt(sheet.paper.wMm)} ${pt(sheet.paper.hMm)}]` +
        ` /Resources ${resources} 0 R /Contents ${content} 0 R >>`,
    );
  }
  const set = await Promise.all(Object.values(fonts).map(async (f) => `/${f.name} ${await f.write(objects)} 0 R`));
  objects.put(resources, `<< /Font << ${set.join(' ')} >> >>`);
  objects.put(tree, `<< /Type /Pages /Kids [${pages.map((p) => `${p} 0 R`).join(' ')}] /Count ${pages.length} >>`);
  const list = contentsList(objects, sheets, pages);
  objects.put(
    catalogue,
    `<< /Type /Catalog /Pages ${tree} 0 R /Outlines ${list} 0 R /Lang (en-GB)` +
      ' /ViewerPreferences << /DisplayDocTitle true /PrintScaling /None >> >>',
  );
  const last = sheets.at(-1);
  const about = last ? spoken(`${last.of} sheets, to ${sayNumber(last)}`) : '()';
  objects.put(info, `<< /Title ${spoken(choices.title)} /Subject ${about} /Creator ${spoken(choices.writer)} >>`);
  return objects.file(catalogue, info);
}
