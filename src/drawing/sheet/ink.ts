import { styleOf } from '../look/style-of.ts';
import { CLOSE, move, type Prim, type Seg, type Stroke, to } from '../paint/prim.ts';
import { baselineDrop, type Weight } from '../text/measure.ts';
import type { Rect } from './paper.ts';
import { wrapTo } from './wrap.ts';

/** Sheets are black on white. */
export const PRINT = styleOf('print');
export const BLACK = PRINT.ink('ink1');
export const WHITE = PRINT.paper;

/** Text on a sheet, mm. */
export const SHEET_TEXT = { answer: 5.2, heading: 3.2, title: 3, body: 2.5, caption: 2.1 } as const;
/** From line to line, by the size of the text. */
export const LINE = 1.4;

export const stroke = (width: number, dash?: readonly number[]): Stroke => ({
  ink: BLACK,
  width,
  cap: 'butt',
  join: 'miter',
  ...(dash ? { dash, dashAt: 0 } : {}),
});

const outline = ({ x, y, w, h }: Rect): Seg[] => [move(x, y), to(x + w, y), to(x + w, y + h), to(x, y + h), CLOSE];

export const box = (r: Rect, pen: number): Prim => ({ p: 'path', path: outline(r), stroke: stroke(pen) });

export const filled = (r: Rect, fill: string, pen = 0): Prim => ({
  p: 'path',
  path: outline(r),
  fill,
  ...(pen > 0 ? { stroke: stroke(pen) } : {}),
});

export const rule = (
  a: readonly [number, number],
  b: readonly [number, number],
  pen: number,
  dash?: readonly number[],
): Prim => ({
  p: 'path',
  path: [move(a[0], a[1]), to(b[0], b[1])],
  stroke: stroke(pen, dash),
});

export interface WordsAt {
  readonly x: number;
  /** Middle of the line of text in height. */
  readonly y: number;
  readonly size?: number;
  readonly weight?: Weight;
  readonly align?: 'left' | 'middle' | 'right';
  readonly turnDeg?: number;
  readonly halo?: boolean;
}

/** One line of text. */
export function words(text: string, at: WordsAt): Prim {
  const { size = SHEET_TEXT.body, turnDeg = 0 } = at;
  const drop = baselineDrop(size);
  const a = (turnDeg * Math.PI) / 180;
  return {
    p: 'text',
    x: at.x - drop * Math.sin(a),
    y: at.y + drop * Math.cos(a),
    text,
    size,
    weight: at.weight ?? 400,
    align: at.align ?? 'left',
    ink: BLACK,
    turnDeg,
    ...(at.halo ? { halo: { ink: WHITE, width: 1.2 } } : {}),
  };
}

/** What stands in a column, and how high it is. */
export interface Piece {
  readonly prims: readonly Prim[];
  readonly h: number;
}

export interface ParagraphAt {
  readonly x: number;
  /** Upper edge of the first line. */
  readonly y: number;
  readonly w: number;
  readonly size?: number;
  readonly weight?: Weight;
  readonly most?: number;
}

/** Text in lines of a width, from an upper edge down. */
export function paragraph(text: string, at: ParagraphAt): Piece {
  const { size = SHEET_TEXT.body, weight = 400, most = Number.POSITIVE_INFINITY } = at;
  const lines = wrapTo(text, size, weight, at.w, most);
  const high = size * LINE;
  return {
    prims: lines.map((line, i) => words(line, { x: at.x, y: at.y + (i + 0.5) * high, size, weight })),
    h: lines.length * high,
  };
}
