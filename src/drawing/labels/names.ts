import type { Box, Fragment, Item, Vec, Wish } from '../display-list.ts';
import { plateMm } from '../paint/prims-of.ts';
import { textWidth } from '../text/measure.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, grow, liesIn, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type NameWish = Extract<Wish, { w: 'name' }>;
type LetterWish = Extract<Wish, { w: 'letter' }>;

const STEP_MM = 4;
const LINE_EM = 1.25;
/** Kept free between a name and its outline. */
const EDGE_MM = 0.5;

function nameItems(at: Vec, wish: NameWish, down: number): Item[] {
  const line = (text: string, first: boolean): Item => ({
    t: 'text',
    at,
    text,
    size: first ? (wish.small ? 'flag' : 'room') : 'flagSecond',
    weight: first ? 600 : 400,
    align: 'middle',
    ink: first ? 'ink2' : 'ink3',
    turnDeg: 0,
    halo: true,
    ...(first ? {} : { offsetMm: [0, -down] as const }),
  });
  return [
    ...(wish.text === '' ? [] : [line(wish.text, true)]),
    ...(wish.second === null ? [] : [line(wish.second, false)]),
  ];
}

/** Steps out from the seed, nearest first. */
const STEPS: readonly Vec[] = Array.from(
  { length: 17 * 17 },
  (_, i): Vec => [(i % 17) - 8, Math.floor(i / 17) - 8],
).sort((p, q) => Math.hypot(...p) - Math.hypot(...q));

/**
 * A name inside its own outline, off the pipes if it can, nearest to its seed. Undefined where the outline is too small
 * for it at this scale: a name that lies in the next room says something wrong.
 */
export function placeName(
  fragment: Fragment,
  wish: NameWish,
  sizes: { room: number; flag: number; flagSecond: number },
  paper: Paper,
  to: Obstacles,
): Placed | undefined {
  const k = paper.mmPerPaperMm;
  const ring = wish.ring.map((p) => paper.at(p));
  const seed = paper.at(wish.at);
  const first = wish.small ? sizes.flag : sizes.room;
  const two = wish.text !== '' && wish.second !== null;
  const down = two ? (first + sizes.flagSecond) * (LINE_EM / 2) : 0;
  const w = Math.max(
    textWidth(wish.text, first, 600),
    wish.second === null ? 0 : textWidth(wish.second, sizes.flagSecond, 400),
  );
  const h = (wish.text === '' ? sizes.flagSecond : first) * LINE_EM + down;
  const boxFor = ([x, y]: Vec): Box => boxAt(x, y - down / 2, w, h);
  let best: { at: Vec; cost: number } | undefined;
  for (const [i, j] of STEPS) {
    const at: Vec = [seed[0] + i * STEP_MM, seed[1] + j * STEP_MM];
    const base = (Math.hypot(i, j) * STEP_MM * COST.per10Mm) / 10;
    if (best && base >= best.cost) break;
    const box = boxFor(at);
    if (!liesIn(ring, grow(box, EDGE_MM)) || !to.isFree(box)) continue;
    const cost = base + to.cost(box);
    if (!best || cost < best.cost) best = { at, cost };
  }
  if (!best) return undefined;
  const box = boxFor(best.at);
  to.claim(box);
  return { id: fragment.id, items: nameItems([best.at[0] * k, best.at[1] * k], wish, down), box };
}

/** Letters of a symbol: inside where there is room, else a small plate beside it; undefined where nothing is free. */
export function placeLetter(
  fragment: Fragment,
  wish: LetterWish,
  tagMm: number,
  paper: Paper,
  to: Obstacles,
): Placed | undefined {
  const k = paper.mmPerPaperMm;
  const at = paper.at(wish.at);
  const w = textWidth(wish.text, tagMm, 600);
  const [hx, hy] = [wish.half[0] / k, wish.half[1] / k];
  const text = (offset: Vec, plated: boolean): Item => ({
    t: 'text',
    at: wish.at,
    text: wish.text,
    size: 'tag',
    weight: 600,
    align: 'middle',
    ink: wish.ink === 'symbolGone' ? 'ink3' : 'ink1',
    turnDeg: 0,
    halo: !plated,
    offsetMm: offset,
  });
  const inside = boxAt(at[0], at[1], w, tagMm);
  if (w <= 2 * hx - 0.6 && tagMm <= 2 * hy - 0.4 && to.isFree(inside) && to.cost(inside) === 0) {
    to.claim(inside);
    return { id: fragment.id, items: [text([0, 0], false)], box: inside };
  }
  if (wish.insideOnly) return undefined;
  const h = plateMm(wish.text, tagMm).h - 1;
  let best: { offset: Vec; cost: number } | undefined;
  for (const more of [0.8, 3, 6]) {
    const dx = hx + more + w / 2;
    const dy = hy + more + h / 2;
    for (const [sx, sy] of [
      [1, 0],
      [-1, 0],
      [0, -1],
      [0, 1],
      [1, -1],
      [-1, -1],
      [1, 1],
      [-1, 1],
    ] as const) {
      const offset: Vec = [sx * dx, sy * dy];
      const box = boxAt(at[0] + offset[0], at[1] + offset[1], w + 0.6, h);
      if (!to.isFree(box)) continue;
      const cost = to.cost(box) + more / 10;
      if (!best || cost < best.cost) best = { offset, cost };
    }
  }
  if (!best || best.cost > 2 * COST.pipe) return undefined;
  const box = boxAt(at[0] + best.offset[0], at[1] + best.offset[1], w + 0.6, h);
  to.claim(box);
  return { id: fragment.id, items: [text(best.offset, false)], box };
}
