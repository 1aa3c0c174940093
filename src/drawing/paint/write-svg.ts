import type { DisplayList } from '../display-list.ts';
import { styleOf, type Theme } from '../look/style-of.ts';
import type { Medium } from '../look/tokens.ts';
import { FONT, textWidth } from '../text/measure.ts';
import { sheetFrame } from './frame.ts';
import type { Prim, Seg, Stroke } from './prim.ts';
import { primsOf } from './prims-of.ts';

export interface SvgChoices {
  /** 50 for 1:50. */
  readonly scale: number;
  readonly theme: Theme;
  readonly title: string;
  readonly description?: string;
  /** Paper mm left free round the drawing. */
  readonly marginMm?: number;
  readonly medium?: Medium;
}

/** Two decimals of a mm are finer than any printer, and the same on every machine. */
const num = (n: number): string => {
  const s = n.toFixed(2).replace(/\.?0+$/, '');
  return s === '-0' ? '0' : s;
};

export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

function pathData(path: readonly Seg[]): string {
  return path
    .map((s) => {
      if (s.c === 'Z') return 'Z';
      return s.c === 'Q' ? `Q${num(s.x1)} ${num(s.y1)} ${num(s.x)} ${num(s.y)}` : `${s.c}${num(s.x)} ${num(s.y)}`;
    })
    .join('');
}

function strokeData(stroke: Stroke | undefined): string {
  if (!stroke) return '';
  const dash = stroke.dash ? ` stroke-dasharray="${stroke.dash.map(num).join(' ')}"` : '';
  const at = stroke.dashAt ? ` stroke-dashoffset="${num(stroke.dashAt)}"` : '';
  const cap = stroke.cap === 'round' ? ' stroke-linecap="round"' : '';
  const join = stroke.join === 'round' ? ' stroke-linejoin="round"' : '';
  return ` stroke="${stroke.ink}" stroke-width="${num(stroke.width)}"${dash}${at}${cap}${join}`;
}

const ANCHOR = { left: 'start', middle: 'middle', right: 'end' } as const;

/** One shape as SVG. A line of text carries its measured width, so that a machine without the font keeps to its room. */
export function svgOf(prim: Prim): string {
  const fill = ` fill="${prim.p === 'text' ? prim.ink : (prim.fill ?? 'none')}"`;
  if (prim.p === 'path') {
    const rule = prim.fill === undefined ? '' : ' fill-rule="evenodd"';
    return `<path d="${pathData(prim.path)}"${fill}${rule}${strokeData(prim.stroke)}/>`;
  }
  if (prim.p === 'circle') {
    return `<circle cx="${num(prim.x)}" cy="${num(prim.y)}" r="${num(prim.r)}"${fill}${strokeData(prim.stroke)}/>`;
  }
  const turn = prim.turnDeg === 0 ? '' : ` transform="rotate(${num(prim.turnDeg)} ${num(prim.x)} ${num(prim.y)})"`;
  const halo = prim.halo
    ? ` paint-order="stroke" stroke="${prim.halo.ink}" stroke-width="${num(prim.halo.width)}" stroke-linejoin="round"`
    : '';
  const width = textWidth(prim.text, prim.size, prim.weight);
  return (
    `<text x="${num(prim.x)}" y="${num(prim.y)}" font-size="${num(prim.size)}" font-weight="${prim.weight}"` +
    ` text-anchor="${ANCHOR[prim.align]}" textLength="${num(width)}" lengthAdjust="spacingAndGlyphs"` +
    `${fill}${halo}${turn}>${escaped(prim.text)}</text>`
  );
}

/** The style every drawing of ours carries: one family, its advance widths as measured. */
export const SVG_STYLE =
  `text{font-family:"${FONT.family}","Hanken Grotesk",sans-serif;font-kerning:none;font-variant-ligatures:none}` +
  'path{stroke-linejoin:miter}';

/**
 * A display list as one SVG file in mm of paper at a scale. Same list, same bytes.
 * The view box is the list's box with a margin; nothing outside the file is referred to.
 */
export function writeSvg(list: DisplayList, choices: SvgChoices): string {
  const look = styleOf(choices.theme);
  const margin = choices.marginMm ?? 6;
  const { box } = list;
  const frame = sheetFrame(choices.scale, [box.minX, box.maxY], [margin, margin], choices.medium ?? 'screen');
  const w = num((box.maxX - box.minX) / choices.scale + 2 * margin);
  const h = num((box.maxY - box.minY) / choices.scale + 2 * margin);
  const groups = list.items.map(({ group, id, items }) => {
    const shapes = items.flatMap((item) => primsOf(item, frame, look).map(svgOf));
    return `<g class="${group}" data-id="${escaped(id)}">${shapes.length > 0 ? `\n${shapes.join('\n')}\n` : ''}</g>`;
  });
  const said = choices.description ? `<desc>${escaped(choices.description)}</desc>\n` : '';
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" role="img">\n` +
    `<title>${escaped(choices.title)}</title>\n${said}<style>${SVG_STYLE}</style>\n` +
    `<rect width="${w}" height="${h}" fill="${look.paper}"/>\n${groups.join('\n')}\n</svg>\n`
  );
}
