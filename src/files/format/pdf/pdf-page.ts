import type { CirclePrim, PathPrim, Prim, Seg, Stroke, TextPrim } from '../../../drawing/paint/prim.ts';
import type { Sheet } from '../../../drawing/sheet/sheet.ts';
import { textWidth } from '../../../drawing/text/measure.ts';
import type { PdfFont } from './pdf-font.ts';

/** Points of a PDF for one mm. */
export const PT_PER_MM = 72 / 25.4;

/** Thousandths of a mm: finer than any printer. */
const num = (n: number): string => {
  const s = n.toFixed(3).replace(/\.?0+$/, '');
  return s === '-0' ? '0' : s;
};

/** "#C9C9C9" as a colour of the page; greys by one figure. */
function colour(hex: string, grey: 'g' | 'G', rgb: 'rg' | 'RG'): string {
  const parts = [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255);
  const [r = 0, g = 0, b = 0] = parts.map((p) => Number(p.toFixed(3)));
  return r === g && g === b ? `${r} ${grey}` : `${r} ${g} ${b} ${rgb}`;
}

function pathOf(path: readonly Seg[]): string {
  let [x, y] = [0, 0];
  const parts: string[] = [];
  for (const s of path) {
    if (s.c === 'Z') {
      parts.push('h');
      continue;
    }
    if (s.c === 'Q') {
      // A curve with one handle, told with two.
      const [ax, ay] = [x + ((s.x1 - x) * 2) / 3, y + ((s.y1 - y) * 2) / 3];
      const [bx, by] = [s.x + ((s.x1 - s.x) * 2) / 3, s.y + ((s.y1 - s.y) * 2) / 3];
      parts.push(`${num(ax)} ${num(ay)} ${num(bx)} ${num(by)} ${num(s.x)} ${num(s.y)} c`);
    } else parts.push(`${num(s.x)} ${num(s.y)} ${s.c === 'M' ? 'm' : 'l'}`);
    [x, y] = [s.x, s.y];
  }
  return parts.join('\n');
}

function strokeOf(stroke: Stroke): string {
  const dash = stroke.dash ? `[${stroke.dash.map(num).join(' ')}] ${num(stroke.dashAt ?? 0)} d` : '[] 0 d';
  const cap = stroke.cap === 'round' ? 1 : 0;
  const join = stroke.join === 'round' ? 1 : 0;
  return `${colour(stroke.ink, 'G', 'RG')} ${num(stroke.width)} w ${cap} J ${join} j ${dash}`;
}

function painted(path: string, fill: string | undefined, stroke: Stroke | undefined): string {
  if (fill === undefined && !stroke) return '';
  const how = [fill === undefined ? '' : colour(fill, 'g', 'rg'), stroke ? strokeOf(stroke) : ''].filter(
    (t) => t !== '',
  );
  const paint = fill === undefined ? 'S' : stroke ? 'B*' : 'f*';
  return `${how.join(' ')}\n${path}\n${paint}`;
}

/** Handles of a quarter of a circle, by its radius. */
const QUARTER = 0.5522847498;

function circlePath({ x, y, r }: CirclePrim): string {
  const k = r * QUARTER;
  const to = (...n: number[]): string => n.map(num).join(' ');
  return [
    `${to(x + r, y)} m`,
    `${to(x + r, y + k, x + k, y + r, x, y + r)} c`,
    `${to(x - k, y + r, x - r, y + k, x - r, y)} c`,
    `${to(x - r, y - k, x - k, y - r, x, y - r)} c`,
    `${to(x + k, y - r, x + r, y - k, x + r, y)} c`,
    'h',
  ].join('\n');
}

export type Fonts = Readonly<Record<TextPrim['weight'], PdfFont>>;

function textOf(prim: TextPrim, fonts: Fonts): string {
  const width = textWidth(prim.text, prim.size, prim.weight);
  const back = prim.align === 'left' ? 0 : prim.align === 'middle' ? width / 2 : width;
  const a = (prim.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(a), Math.sin(a)];
  const [x, y] = [prim.x - back * c, prim.y - back * s];
  const font = fonts[prim.weight];
  const at = `${num(c)} ${num(s)} ${num(s)} ${num(-c)} ${num(x)} ${num(y)} Tm`;
  const set = `/${font.name} ${num(prim.size)} Tf ${at} ${font.glyphs(prim.text)} Tj`;
  const said = `BT ${colour(prim.ink, 'g', 'rg')} 0 Tr ${set} ET`;
  if (!prim.halo) return said;
  // The halo is letters drawn thick in paper, under the letters themselves: no part of what is read.
  const halo = `${colour(prim.halo.ink, 'G', 'RG')} ${num(prim.halo.width)} w 1 j [] 0 d`;
  return `/Artifact BMC\nBT ${halo} 1 Tr ${set} ET\nEMC\n${said}`;
}

function primOf(prim: Prim, fonts: Fonts): string {
  if (prim.p === 'text') return textOf(prim, fonts);
  const path = prim.p === 'circle' ? circlePath(prim) : pathOf((prim as PathPrim).path);
  return painted(path, prim.fill, prim.stroke);
}

/** What a page paints: in mm from its upper left corner, y down, as the sheet has it. */
export function pageContent(sheet: Sheet, fonts: Fonts): string {
  const high = sheet.paper.hMm * PT_PER_MM;
  const parts = sheet.parts.map(({ clip, prims }) => {
    const shapes = prims
      .map((p) => primOf(p, fonts))
      .filter((t) => t !== '')
      .join('\n');
    if (!clip) return shapes;
    return `q\n${num(clip.x)} ${num(clip.y)} ${num(clip.w)} ${num(clip.h)} re W n\n${shapes}\nQ`;
  });
  return `${PT_PER_MM.toFixed(9)} 0 0 ${(-PT_PER_MM).toFixed(9)} 0 ${high.toFixed(6)} cm\n4 M\n${parts.join('\n')}\n`;
}
