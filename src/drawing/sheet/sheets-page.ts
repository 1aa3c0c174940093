import { escaped } from '../paint/write-svg.ts';
import type { Sheet } from './sheet.ts';
import { SHEET_STYLE, sheetSvg } from './sheet-svg.ts';

/** Sheets as one HTML page that prints each on paper of its own size, at its true scale. Refers to nothing outside it. */
export function sheetsPage(name: string, sheets: readonly Sheet[]): string {
  const papers = [...new Map(sheets.map((s) => [s.paper.id, s.paper])).values()];
  const rules = papers.map(
    (p) =>
      `@page ${p.id}{size:${p.wMm}mm ${p.hMm}mm;margin:0}.sheet-${p.id}{page:${p.id};width:${p.wMm}mm;height:${p.hMm}mm}`,
  );
  const pages = sheets.map((s) => `<div class="sheet sheet-${s.paper.id}">\n${sheetSvg(s, false)}</div>`);
  return (
    `<!doctype html>\n<html lang="en-GB">\n<head>\n<meta charset="utf-8">\n<title>${escaped(name)}</title>\n<style>\n` +
    `@page{margin:0}${rules.join('')}body{margin:0;background:#fff}.sheet{overflow:hidden;break-after:page}` +
    `.sheet:last-child{break-after:auto}svg{display:block}${SHEET_STYLE}\n</style>\n</head>\n<body>\n${pages.join('\n')}\n</body>\n</html>\n`
  );
}
