/** What a px of our style sheets is a part of: the letters of a device whose user has changed nothing. */
const USUAL_PX = 16;
/** Edges and lines stay as thin as they are. */
const THIN_PX = 2;

const inEms = (px: string, unit: 'em' | 'rem'): string => `${Number((Number(px) / USUAL_PX).toFixed(5))}${unit}`;

/**
 * A style sheet whose sizes follow the text size of the device. They are written in px as they are at 100 %; built, they are parts of
 * the letters' height, and the widths at which the page is laid out otherwise are too. With text at 200 % the page is then what it is at
 * twice the zoom: nothing is cut off or runs into another, and nobody has to think of it while a sheet is written.
 */
export function pxToRem(css: string): string {
  return css
    .split(/(@media[^{]*)/)
    .map((part) =>
      part.startsWith('@media')
        ? part.replace(/(\d*\.?\d+)px/g, (_, px: string) => inEms(px, 'em'))
        : part.replace(/(\d*\.?\d+)px/g, (whole, px: string) => (Number(px) <= THIN_PX ? whole : inEms(px, 'rem'))),
    )
    .join('');
}
