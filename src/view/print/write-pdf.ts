import { jsPDF } from 'jspdf';
import { svg2pdf } from 'svg2pdf.js';
import type { Sheet } from '../../drawing/sheet/sheet.ts';
import { sayNumber } from '../../drawing/sheet/sheet-svg.ts';
import { PDF_FAMILY, pdfPicture } from './pdf-picture.ts';
import type { FontBytes } from './sheet-fonts.ts';

export interface PdfChoices {
  readonly title: string;
  /** What wrote it. */
  readonly writer: string;
  readonly fonts: FontBytes;
}

/** What SVG takes where nothing else is told; a PDF takes 10. */
const MITER_LIMIT = 4;

/** A file as the library keeps it: a letter for each byte. */
const asLetters = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');

function addFonts(doc: jsPDF, fonts: FontBytes): void {
  for (const weight of [400, 600] as const) {
    const family = PDF_FAMILY[weight];
    doc.addFileToVFS(`${family}.ttf`, asLetters(fonts[weight]));
    doc.addFont(`${family}.ttf`, family, 'normal');
  }
}

/** Throws where the font lacks a letter: the library would leave out the rest of the line without a word. */
function checkLetters(doc: jsPDF, picture: Element, sheet: Sheet): void {
  for (const text of picture.querySelectorAll('text')) {
    const { metadata } = doc.setFont(text.getAttribute('font-family') ?? '', 'normal').getFont();
    for (const letter of text.textContent) {
      const code = letter.codePointAt(0) ?? 0;
      if (/[\t\n\r]/.test(letter) || (code < 0x10000 && metadata.characterToGlyph(code) !== 0)) continue;
      throw new Error(
        `The font of the PDF has no "${letter}", which stands on ${sayNumber(sheet)}. Write it another way, or press Print and save a PDF there.`,
      );
    }
  }
}

/**
 * Sheets as one PDF file: lines stay lines, text stays text in the font of the drawing, and a mm is a mm. Readers that
 * heed it print it without fitting. Throws where there is no sheet, a font is broken or lacks a letter.
 */
export async function writePdf(sheets: readonly Sheet[], choices: PdfChoices): Promise<ArrayBuffer> {
  const first = sheets[0];
  if (!first) throw new Error('There is no sheet to write.');
  const format = ({ paper }: Sheet): [number, number] => [paper.wMm, paper.hMm];
  const turn = ({ paper }: Sheet): 'l' | 'p' => (paper.wMm > paper.hMm ? 'l' : 'p');
  const doc = new jsPDF({
    unit: 'mm',
    format: format(first),
    orientation: turn(first),
    compress: true,
    putOnlyUsedFonts: true,
  });
  addFonts(doc, choices.fonts);
  for (const sheet of sheets) {
    // The library begins a page with the pen it last set, in its own unit where a limit has none.
    doc.setLineCap('butt').setLineJoin('miter');
    if (sheet !== first) doc.addPage(format(sheet), turn(sheet));
    doc.setLineMiterLimit(MITER_LIMIT / doc.internal.scaleFactor);
    const picture = pdfPicture(sheet);
    checkLetters(doc, picture, sheet);
    await svg2pdf(picture, doc, { width: sheet.paper.wMm, height: sheet.paper.hMm, loadImages: false });
    doc.outline.add(null, `${sheet.number}: ${sheet.head.title}`, { pageNumber: doc.getNumberOfPages() });
  }
  doc.setLanguage('en-GB').setDisplayMode('fullpage');
  doc.viewerPreferences({ DisplayDocTitle: true, PrintScaling: 'None' });
  doc.setProperties({ title: choices.title, subject: `${first.of} sheets`, creator: choices.writer });
  return doc.output('arraybuffer');
}
