import type { Fragment, Item, Vec, Wish } from '../display-list.ts';
import { textWidth } from '../text/measure.ts';
import type { Obstacles } from './obstacles.ts';
import { boxAt, grow, type Paper } from './paper.ts';
import type { Placed } from './tags.ts';

type LetterWish = Extract<Wish, { w: 'letter' }>;

/** Room about a letter inside its symbol, on either side and over and under. */
const INSIDE_MM = { x: 0.5, y: 0.25 };
const BESIDE_MM = 0.8;
/** Between a letter and any other label. */
const APART_MM = 0.8;
const SIDES: readonly Vec[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
];

/** Plain and light: a letter of a thing must not be read as the tag of a pipe. */
const letterItem = (wish: LetterWish, inside: boolean, offset: Vec): Item => ({
  t: 'text',
  at: wish.at,
  text: wish.text,
  size: 'small',
  weight: inside ? 600 : 400,
  align: 'middle',
  ink: inside && wish.ink !== 'symbolGone' ? 'ink1' : 'ink3',
  turnDeg: 0,
  halo: true,
  offsetMm: offset,
});

/** Letters of a symbol inside it, where they cover nothing; undefined where they do not fit. */
export function letterInside(
  fragment: Fragment,
  wish: LetterWish,
  mm: number,
  paper: Paper,
  to: Obstacles,
): Placed | undefined {
  const k = paper.mmPerPaperMm;
  const at = paper.at(wish.at);
  const w = textWidth(wish.text, mm, 600);
  const box = boxAt(at[0], at[1], w, mm);
  const fits = w <= (2 * wish.half[0]) / k - 2 * INSIDE_MM.x && mm <= (2 * wish.half[1]) / k - 2 * INSIDE_MM.y;
  if (!fits || !to.isFree(box) || to.cost(box) > 0) return undefined;
  to.claim(box);
  return { id: fragment.id, items: [letterItem(wish, true, [0, 0])], box, letter: wish };
}

/** Letters close beside their symbol, where nothing at all is covered, nor a wall; undefined where there is no such place. */
export function letterBeside(
  fragment: Fragment,
  wish: LetterWish,
  mm: number,
  paper: Paper,
  to: Obstacles,
): Placed | undefined {
  const k = paper.mmPerPaperMm;
  const at = paper.at(wish.at);
  if (wish.insideOnly || !to.sees(at)) return undefined;
  const w = textWidth(wish.text, mm, 400);
  const dx = wish.half[0] / k + BESIDE_MM + w / 2;
  const dy = wish.half[1] / k + BESIDE_MM + mm / 2;
  for (const [sx, sy] of SIDES) {
    const offset: Vec = [sx * dx, sy * dy];
    const box = boxAt(at[0] + offset[0], at[1] + offset[1], w, mm);
    if (!to.isFree(grow(box, APART_MM)) || to.cost(box) > 0 || to.inSolid([at[0] + offset[0], at[1] + offset[1]]))
      continue;
    to.claim(box);
    return { id: fragment.id, items: [letterItem(wish, false, offset)], box };
  }
  return undefined;
}
