import type { Sheet } from '../../drawing/sheet/sheet.ts';
import { pictureOf } from './sheet-picture.tsx';

/** Families of a PDF file, one for each weight: two programs of one name in a file are taken for each other by printers. */
export const PDF_FAMILY: Readonly<Record<'400' | '600', string>> = {
  400: 'HankenGrotesk-Regular',
  600: 'HankenGrotesk-SemiBold',
};

const numberOf = (element: Element, name: string): number => Number(element.getAttribute(name) ?? 0);

/** A line of text that starts where its measured width says, whatever the widths of this browser. */
function placeText(text: Element): void {
  const anchor = text.getAttribute('text-anchor');
  const back = anchor === 'end' ? 1 : anchor === 'middle' ? 0.5 : 0;
  text.setAttribute('x', String(numberOf(text, 'x') - back * numberOf(text, 'textLength')));
  text.setAttribute('font-family', PDF_FAMILY[text.getAttribute('font-weight') === '600' ? '600' : '400']);
  for (const name of ['text-anchor', 'textLength', 'lengthAdjust', 'font-weight']) text.removeAttribute(name);
}

/** A PDF strokes letters after it fills them, never before: the halo becomes a line of its own below them. */
function partHalo(text: Element): void {
  if (!text.hasAttribute('paint-order')) return;
  const halo = text.cloneNode(true) as Element;
  halo.setAttribute('fill', 'none');
  text.before(halo);
  for (const name of ['paint-order', 'stroke', 'stroke-width', 'stroke-linejoin']) text.removeAttribute(name);
}

/** Hundredths of a mm, the finest a sheet tells. */
const fine = (numbers: string): string => numbers.replace(/-?[\d.]+/g, (n) => String(Math.round(Number(n) * 100)));

/** Where a beat of dashes starts is read as a whole number: told in hundredths it stays where it is. */
function placeDashes(path: Element): void {
  for (const name of ['d', 'stroke-width', 'stroke-dasharray', 'stroke-dashoffset']) {
    path.setAttribute(name, fine(path.getAttribute(name) ?? ''));
  }
  path.setAttribute('transform', 'scale(0.01)');
}

/** A sheet as the picture that a PDF is made from: the same shapes, told in the words that svg2pdf understands. */
export function pdfPicture(sheet: Sheet): Element {
  const picture = pictureOf(sheet);
  for (const text of picture.querySelectorAll('text')) {
    placeText(text);
    partHalo(text);
  }
  for (const path of picture.querySelectorAll('path[stroke-dashoffset]')) placeDashes(path);
  return picture;
}
