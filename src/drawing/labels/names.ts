import type { Fragment, Item, Vec, Wish } from '../display-list.ts';
import { plateMm } from '../paint/prims-of.ts';
import { textWidth } from '../text/measure.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type NameWish = Extract<Wish, { w: 'name' }>;
type LetterWish = Extract<Wish, { w: 'letter' }>;

const STEP_MM = 4;
const LINE_EM = 1.25;

function nameItems(at: Vec, wish: NameWish, down: number): Item[] {
  const line = (text: string, first: boolean): Item => ({
    t: 'text',
    at,
    text,
    size: first ? 'room' : 'flagSecond',
    weight: first ? 600 : 400,
    align: 'middle',
    ink: first ? 'ink2' : 'ink3',
    turnDeg: 0,
    halo: true,
    ...(first ? {} : { offsetMm: [0, -down] as const }),
  });
  return [line(wish.text, true), ...(wish.second === null ? [] : [line(wish.second, false)])];
}

/** A room's name near its seed, off the pipes if it can. It always shows: a room without a name cannot be spoken of. */
export function placeName(
  fragment: Fragment,
  wish: NameWish,
  sizes: { room: number; flagSecond: number },
  paper: Paper,
  to: Obstacles,
): Placed {
  const k = paper.mmPerPaperMm;
  const seed = paper.at(wish.at);
  const down = (sizes.room + sizes.flagSecond) * (LINE_EM / 2);
  const w = Math.max(
    textWidth(wish.text, sizes.room, 600),
    wish.second === null ? 0 : textWidth(wish.second, sizes.flagSecond, 400),
  );
  const h = sizes.room * LINE_EM + (wish.second === null ? 0 : down);
  const boxFor = ([x, y]: Vec) => boxAt(x, y - (wish.second === null ? 0 : down / 2), w, h);
  let best = { at: seed, cost: Number.POSITIVE_INFINITY };
  const reach = 7;
  for (let i = -reach; i <= reach; i++) {
    for (let j = -reach; j <= reach; j++) {
      const at: Vec = [seed[0] + i * STEP_MM, seed[1] + j * STEP_MM];
      const base = (Math.hypot(i, j) * STEP_MM * COST.per10Mm) / 10;
      if (base >= best.cost) continue;
      const box = boxFor(at);
      const inside =
        box.minX * k >= wish.within.minX &&
        box.maxX * k <= wish.within.maxX &&
        box.minY * k >= wish.within.minY &&
        box.maxY * k <= wish.within.maxY;
      if ((i !== 0 || j !== 0) && !inside) continue;
      if (!to.isFree(box)) continue;
      const cost = base + to.cost(box);
      if (cost < best.cost) best = { at, cost };
    }
  }
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
  const own = new Set([fragment.id]);
  if (w <= 2 * hx - 0.6 && tagMm <= 2 * hy - 0.4 && to.isFree(inside) && to.cost(inside, own) === 0) {
    to.claim(inside);
    return { id: fragment.id, items: [text([0, 0], false)], box: inside };
  }
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
