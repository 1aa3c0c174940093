import type { Box, Fragment, Item, Vec, Wish } from '../display-list.ts';
import { textWidth } from '../text/measure.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, grow, liesIn, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type NameWish = Extract<Wish, { w: 'name' }>;

const STEP_MM = 4;
const LINE_EM = 1.25;
/** Kept free between a name and its outline. */
const EDGE_MM = 0.5;
/** Between the name of a room and any other label. */
const APART_MM = 1;
/** From the edge of the view to the first place tried of a name whose own place is out of it. */
const IN_MM = 14;

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

/** A room of which only a part is in view has its name in that part. */
function seedOf([x, y]: Vec, within: Box | undefined): Vec {
  if (!within) return [x, y];
  const least = (lo: number, hi: number, v: number): number => {
    const edge = Math.min(IN_MM, (hi - lo) / 2);
    return Math.min(hi - edge, Math.max(lo + edge, v));
  };
  return [least(within.minX, within.maxX, x), least(within.minY, within.maxY, y)];
}

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
  const own = paper.at(wish.at);
  const seed = seedOf(own, to.within);
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
    if (!liesIn(ring, grow(box, EDGE_MM)) || !to.isFree(grow(box, wish.small ? 0 : APART_MM))) continue;
    const cost = base + to.cost(box);
    if (!best || cost < best.cost) best = { at, cost };
  }
  // A room of which only a strip shows is not named across its pipes.
  if (!best || (!to.sees(own) && best.cost >= COST.pipe)) return undefined;
  const box = boxFor(best.at);
  to.claim(box);
  return { id: fragment.id, items: nameItems([best.at[0] * k, best.at[1] * k], wish, down), box };
}
