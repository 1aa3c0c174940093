import { escaped, SVG_STYLE, svgOf } from '../paint/write-svg.ts';
import type { Sheet } from './sheet.ts';

const num = (n: number): string => String(Math.round(n * 100) / 100);

export const sayNumber = (sheet: Pick<Sheet, 'number' | 'of'>): string => `sheet ${sheet.number} of ${sheet.of}`;

/** As drawings have it, and letters at their own widths however small they are shown. */
export const SHEET_STYLE = `${SVG_STYLE}text{text-rendering:geometricPrecision}`;

/**
 * A sheet as SVG at its true size in mm. `style`: with the style that names the font, for a file of its own; a page that
 * shows it brings that itself, since its policy lets no style in by any other way.
 */
export function sheetSvg(sheet: Sheet, style: boolean): string {
  const { wMm, hMm } = sheet.paper;
  const parts = sheet.parts.map(({ clip, prims }) => {
    const shapes = prims.map(svgOf).join('\n');
    if (!clip) return `<g>\n${shapes}\n</g>`;
    // An inner picture is cut off at its edge by itself: no ids that could meet those of another sheet.
    const [x, y, w, h] = [num(clip.x), num(clip.y), num(clip.w), num(clip.h)];
    return `<svg x="${x}" y="${y}" width="${w}" height="${h}" viewBox="${x} ${y} ${w} ${h}">\n${shapes}\n</svg>`;
  });
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="sheet-picture" width="${num(wMm)}mm" height="${num(hMm)}mm"` +
    ` viewBox="0 0 ${num(wMm)} ${num(hMm)}" role="img">\n` +
    `<title>${escaped(`${sheet.head.title}, ${sayNumber(sheet)}`)}</title>\n` +
    `${style ? `<style>${SHEET_STYLE}</style>\n` : ''}` +
    `<rect width="${num(wMm)}" height="${num(hMm)}" fill="#FFFFFF"/>\n${parts.join('\n')}\n</svg>\n`
  );
}
