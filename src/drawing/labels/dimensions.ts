import type { Box, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import type { Obstacles } from './obstacles.ts';
import { boxAt, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type DimensionWish = Extract<Wish, { w: 'dimension' }>;

const LINE: LineStyle = { ink: 'dimension', pen: PEN.dimension, dash: [], fit: false };
const EXTENSION: LineStyle = { ink: 'dimension', pen: 0.13, dash: [], fit: false };
/** From the thing measured to its extension line, and of the extension past the measured line. */
const GAP_MM = 1.2;
const PAST_MM = 1;
/** From the measured line to the middle of its figure. */
const OVER_EM = 0.72;

/**
 * A measured length: line, slants at both ends, extensions, figure over it and read from below or from the right.
 * A figure that does not fit between stands outside, to the right.
 */
function dimension(id: string, wish: DimensionWish, figureMm: number, paper: Paper): Placed {
  const pa = paper.at(wish.a);
  const pb = paper.at(wish.b);
  const off: Vec = [wish.side[0] * wish.awayMm, wish.side[1] * wish.awayMm];
  const upright = Math.abs(pb[1] - pa[1]) > Math.abs(pb[0] - pa[0]);
  const along = (Math.atan2(pb[1] - pa[1], pb[0] - pa[0]) * 180) / Math.PI;
  const turnDeg = upright ? 90 : along > 90.5 ? along - 180 : along < -90.5 ? along + 180 : along;
  const length = Math.hypot(pb[0] - pa[0], pb[1] - pa[1]);
  const width = textWidth(wish.text, figureMm, 400);
  const over = figureMm * OVER_EM;
  const up: Vec = upright ? [-1, 0] : [0, 1];
  const fits = width + 1.2 <= length;
  const last = upright ? (pb[1] > pa[1] ? 'b' : 'a') : pb[0] > pa[0] ? 'b' : 'a';
  const middle: Vec = [(wish.a[0] + wish.b[0]) / 2, (wish.a[1] + wish.b[1]) / 2];
  const out = width / 2 + 1.6;
  const figureAt = fits ? middle : wish[last];
  const shift: Vec = fits ? [0, 0] : upright ? [0, out] : [out, 0];
  const offset: Vec = [off[0] + up[0] * over + shift[0], off[1] + up[1] * over + shift[1]];
  const ends = [wish.a, wish.b];
  const items: Item[] = [
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
        turnDeg: upright ? 90 : turnDeg,
        ink: 'dimension',
        offsetMm: off,
      }),
    ),
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
  const box: Box = upright
    ? boxAt(fx + offset[0], fy + offset[1], figureMm, width)
    : boxAt(fx + offset[0], fy + offset[1], width, figureMm);
  return { id, items, box };
}

/** Further off by this each time, where a figure would lie on another label. */
const STEP_MM = 5;
const TRIES = 4;

/** A dimension where its figure is free, as near as was wished; undefined where no try is. Its line costs little to cover. */
export function placeDimension(
  id: string,
  wish: DimensionWish,
  figureMm: number,
  paper: Paper,
  to: Obstacles,
): Placed | undefined {
  for (let i = 0; i < TRIES; i++) {
    const tried = { ...wish, awayMm: wish.awayMm + i * STEP_MM };
    const placed = dimension(id, tried, figureMm, paper);
    if (!to.isFree(placed.box)) continue;
    to.claim(placed.box);
    const off: Vec = [tried.side[0] * tried.awayMm, tried.side[1] * tried.awayMm];
    const [a, b] = [paper.at(wish.a), paper.at(wish.b)];
    to.addLine([a[0] + off[0], a[1] + off[1]], [b[0] + off[0], b[1] + off[1]], 'dimension', id);
    return placed;
  }
  return undefined;
}
