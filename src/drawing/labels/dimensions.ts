import { direction } from '../../geometry/vec.ts';
import type { Box, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import type { Obstacles } from './obstacles.ts';
import { boxAt, clipTo, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type DimensionWish = Extract<Wish, { w: 'dimension' }>;

const LINE: LineStyle = { ink: 'dimension', pen: PEN.dimension, dash: [], fit: false };
const EXTENSION: LineStyle = { ink: 'dimension', pen: 0.13, dash: [], fit: false };
/** From the thing measured to its extension line, and of the extension past the measured line. */
const GAP_MM = 1.2;
const PAST_MM = 1;
/** From the measured line to the middle of its figure. */
const OVER_EM = 0.72;
/** An upright that leans back by no more than ten degrees. */
const LEANS_BACK = 100;
/** From a pipe to a figure that stands alone. */
const BARE_MM = 0.6;

/** Along its line, read from below or from the right: a line that leans back a little is still read from the right. */
const asRead = (deg: number): number => (deg > LEANS_BACK ? deg - 180 : deg <= LEANS_BACK - 180 ? deg + 180 : deg);

/**
 * A measured length: line, slants at both ends, extensions, figure over it and read from below or from the right.
 * A figure that does not fit between stands outside, to the right.
 */
function dimension(
  id: string,
  wish: DimensionWish,
  figureMm: number,
  paper: Paper,
  t: number,
  bare: boolean,
): Placed | undefined {
  const pa = paper.at(wish.a);
  const pb = paper.at(wish.b);
  const off: Vec = [wish.side[0] * wish.awayMm, wish.side[1] * wish.awayMm];
  const turnDeg = asRead((Math.atan2(pb[1] - pa[1], pb[0] - pa[0]) * 180) / Math.PI);
  const { x: c, y: s } = direction(turnDeg);
  const length = Math.hypot(pb[0] - pa[0], pb[1] - pa[1]);
  const width = textWidth(wish.text, figureMm, 400);
  const over = figureMm * OVER_EM;
  // Over its line as it is read; alone, away from what it measures.
  const up: Vec = bare ? wish.side : [-s, c];
  const fits = width + 1.2 <= length;
  if (bare && !fits) return undefined;
  const last = (pb[0] - pa[0]) * c + (pb[1] - pa[1]) * s > 0 ? 'b' : 'a';
  const middle: Vec = [wish.a[0] + (wish.b[0] - wish.a[0]) * t, wish.a[1] + (wish.b[1] - wish.a[1]) * t];
  const out = width / 2 + 1.6;
  const figureAt = fits ? middle : wish[last];
  const shift: Vec = fits ? [0, 0] : [c * out, s * out];
  const offset: Vec = [off[0] + up[0] * over + shift[0], off[1] + up[1] * over + shift[1]];
  const ends = [wish.a, wish.b];
  const lines: Item[] = [
    { t: 'line', pts: ends, offsetsMm: [off, off], style: LINE },
    ...ends.map(
      (p): Item => ({
        t: 'line',
        pts: [p, p],
        offsetsMm: [
          [wish.side[0] * GAP_MM, wish.side[1] * GAP_MM],
          [wish.side[0] * (wish.awayMm + PAST_MM), wish.side[1] * (wish.awayMm + PAST_MM)],
        ],
        style: EXTENSION,
      }),
    ),
    ...ends.map(
      (p): Item => ({
        t: 'mark',
        mark: 'slant',
        at: p,
        turnDeg,
        ink: 'dimension',
        offsetMm: off,
      }),
    ),
  ];
  const items: Item[] = [
    ...(bare ? [] : lines),
    {
      t: 'text',
      at: figureAt,
      text: wish.text,
      size: 'dimension',
      weight: 400,
      align: 'middle',
      ink: 'ink2',
      turnDeg,
      halo: true,
      offsetMm: offset,
      ...(wish.unsure ? { underline: 'dotted' as const } : {}),
    },
  ];
  const [fx, fy] = paper.at(figureAt);
  const [w, h] = [Math.abs(c) * width + Math.abs(s) * figureMm, Math.abs(s) * width + Math.abs(c) * figureMm];
  const box: Box = boxAt(fx + offset[0], fy + offset[1], w, h);
  const { a, b, measures } = wish;
  if (!measures) return { id, items, box };
  const mm = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return { id, items, box, figure: { measures, mm, a, b, at: figureAt, offsetMm: offset, halfMm: [w / 2, h / 2] } };
}

/** Further off by this each time, where a figure would lie on another label. */
const STEP_MM = 5;
const TRIES = 4;
/** A measured line that runs through another label, or stands on the other side of what it measures. */
const THROUGH_LABEL = 12;
const OTHER_SIDE = 1;
const FURTHER = 2;
/** Places of the figure along its line. */
const SLIDES = [0.5, 0.35, 0.65, 0.2, 0.8];

export interface DimensionChoice {
  /** May stand on either side of what is measured, its figure anywhere along it. */
  readonly free?: boolean;
  /** The figure alone, close by: where a measured line would only crowd the drawing. */
  readonly bare?: boolean;
}

const costOfLine = (wish: DimensionWish, paper: Paper, to: Obstacles): number => {
  const off: Vec = [wish.side[0] * wish.awayMm, wish.side[1] * wish.awayMm];
  const [a, b] = [paper.at(wish.a), paper.at(wish.b)];
  return to.lineIsFree([a[0] + off[0], a[1] + off[1]], [b[0] + off[0], b[1] + off[1]]) ? 0 : THROUGH_LABEL;
};

/** The part of what is measured that shows, as parts of its length; undefined where nothing does. */
function shown(wish: DimensionWish, paper: Paper, to: Obstacles): readonly [number, number] | undefined {
  if (!to.within) return [0, 1];
  const [a, b] = [paper.at(wish.a), paper.at(wish.b)];
  const off: Vec = [wish.side[0] * wish.awayMm, wish.side[1] * wish.awayMm];
  const clipped = clipTo(to.within, [a[0] + off[0], a[1] + off[1]], [b[0] + off[0], b[1] + off[1]]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (!clipped || length === 0) return undefined;
  const along = ([x, y]: Vec): number =>
    ((x - a[0] - off[0]) * (b[0] - a[0]) + (y - a[1] - off[1]) * (b[1] - a[1])) / length ** 2;
  return [along(clipped[0]), along(clipped[1])];
}

/**
 * A dimension in the cheapest place where its figure is free and in view; undefined where no try is. What is fixed goes
 * to its own side, as near as was wished.
 */
export function placeDimension(
  id: string,
  wish: DimensionWish,
  figureMm: number,
  paper: Paper,
  to: Obstacles,
  choice: DimensionChoice = {},
): Placed | undefined {
  if (choice.free && to.within && !clipTo(to.within, paper.at(wish.a), paper.at(wish.b))) return undefined;
  let best: { placed: Placed; wish: DimensionWish; cost: number } | undefined;
  for (const [n, side] of [wish.side, [-wish.side[0], -wish.side[1]] as Vec].entries()) {
    if (n > 0 && !choice.free) break;
    for (let i = 0; i < TRIES; i++) {
      const base = i * FURTHER + n * OTHER_SIDE;
      if (best && base >= best.cost) break;
      const awayMm = choice.bare ? BARE_MM + i * figureMm : wish.awayMm + i * STEP_MM;
      const tried = { ...wish, side, awayMm };
      const part = shown(tried, paper, to);
      if (!part) continue;
      const through = choice.bare ? 0 : costOfLine(tried, paper, to);
      for (const slide of choice.free ? SLIDES : [0.5]) {
        const t = choice.free ? part[0] + (part[1] - part[0]) * slide : slide;
        const placed = dimension(id, tried, figureMm, paper, t, choice.bare ?? false);
        if (!placed || !to.isFree(placed.box)) continue;
        const cost = base + through + Math.abs(slide - 0.5) + (choice.free ? to.cost(placed.box) : 0);
        if (!best || cost < best.cost) best = { placed, wish: tried, cost };
      }
      if (best && !choice.free) break;
    }
  }
  if (!best) return undefined;
  to.claim(best.placed.box);
  if (!choice.bare) {
    const { side, awayMm } = best.wish;
    const off: Vec = [side[0] * awayMm, side[1] * awayMm];
    const [a, b] = [paper.at(wish.a), paper.at(wish.b)];
    to.addLine([a[0] + off[0], a[1] + off[1]], [b[0] + off[0], b[1] + off[1]], 'dimension', id);
  }
  return best.placed;
}
