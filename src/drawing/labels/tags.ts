import type { Box, Figure, Fragment, Item, Spread, Vec, Wish } from '../display-list.ts';
import { plateMm } from '../paint/prims-of.ts';
import { spreadMm } from '../paint/spread.ts';
import type { Fineness } from './fineness.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, clipTo, grow, holds, type Paper } from './paper.ts';

/** After the first tag of a stretch, another each so many mm of paper. */
const EVERY_MM = 160;
const STEP_MM = 2;
/** Room between the plate and the end of its leg. */
const END_MM = 0.8;
/** A line so near to a plate looks like a part of it. */
const NEAR_MM = 0.6;
/** Beside the line, when none of its legs is long enough to carry a plate. */
const BESIDE_MM = 1.2;
/** Each mm further off makes it less plain whose tag it is. */
const ASTRAY = 0.6;
/** Shorter than so many of its plates, a leg of a coarse drawing says its letters only; then it says nothing. */
const COARSE_LEGS = 4;
const COARSE_LEAST = 2;
/** An unseen stretch says how long it may be wherever that covers no more than this part of it. */
const COARSE_UNSEEN = 2.6;
/** Nodes this far past twice the plate can be covered by no place that is tried. */
const REACH_MM = 4;

type TagWish = Extract<Wish, { w: 'tag' }>;

export interface TagLeg {
  readonly fragment: Fragment;
  readonly wish: TagWish;
  readonly p: Vec;
  readonly q: Vec;
  readonly length: number;
}

/** What a tag says, and how large. */
interface TagWords {
  readonly text: string;
  readonly size: 'tag' | 'small';
  readonly w: number;
  readonly h: number;
}

export interface TagSizes {
  readonly tag: number;
  readonly small: number;
}

export interface Placed {
  readonly id: string;
  readonly items: readonly Item[];
  /** Room taken, in mm of paper. */
  readonly box: Box;
  /** The wish of a letter that this answers. */
  readonly letter?: Wish;
  readonly figure?: Figure;
}

const between = (p: Vec, q: Vec, t: number): Vec => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];

/** Legs that want a tag, as far as they are in view, by stretch. */
export function tagLegs(fragments: readonly Fragment[], paper: Paper, visible: Box | undefined): Map<string, TagLeg[]> {
  const byStretch = new Map<string, TagLeg[]>();
  const inPaper = visible && {
    minX: visible.minX / paper.mmPerPaperMm,
    minY: visible.minY / paper.mmPerPaperMm,
    maxX: visible.maxX / paper.mmPerPaperMm,
    maxY: visible.maxY / paper.mmPerPaperMm,
  };
  for (const fragment of fragments) {
    for (const wish of fragment.wishes) {
      if (wish.w !== 'tag') continue;
      const whole: [Vec, Vec] = [paper.at(wish.from, wish.spread?.[0]), paper.at(wish.to, wish.spread?.[1])];
      const shown = inPaper ? clipTo(inPaper, ...whole) : whole;
      if (!shown) continue;
      const [p, q] = shown;
      const leg = { fragment, wish, p, q, length: Math.hypot(p[0] - q[0], p[1] - q[1]) };
      const there = byStretch.get(wish.stretch);
      if (there) there.push(leg);
      else byStretch.set(wish.stretch, [leg]);
    }
  }
  return byStretch;
}

/** Does a leg lie in a bank whose lines are drawn apart at this scale? */
const inBank = (leg: TagLeg, paper: Paper): boolean =>
  (leg.wish.spread ?? []).some((ends) => {
    const [dx, dy] = ends[0] ? spreadMm([ends[0]], paper.mmPerPaperMm) : [0, 0];
    return dx !== 0 || dy !== 0;
  });

function itemAt(leg: TagLeg, words: TagWords, at: Vec, paper: Paper): Item {
  const k = paper.mmPerPaperMm;
  const { wish } = leg;
  const own: Spread | undefined = wish.spread?.[0]?.[0] ? [wish.spread[0][0]] : undefined;
  const [mx, my] = own ? paper.at([0, 0], own) : [0, 0];
  return {
    t: 'text',
    at: [(at[0] - mx) * k, (at[1] - my) * k],
    text: words.text,
    size: words.size,
    weight: 600,
    align: 'middle',
    ink: wish.ink === 'cantTell' ? 'cantTell' : 'ink1',
    turnDeg: 0,
    halo: false,
    plate: wish.ink,
    ...(own ? { spread: own } : {}),
  };
}

/** The best free place for a plate on a leg, nearest `aim` of its length. */
function onLeg(
  leg: TagLeg,
  aim: number,
  size: { w: number; h: number },
  to: Obstacles,
  nodes: readonly Vec[],
): Vec | undefined {
  const { p, q, length } = leg;
  if (length === 0) return undefined;
  const dx = Math.abs(q[0] - p[0]) / length;
  const dy = Math.abs(q[1] - p[1]) / length;
  const half =
    Math.min(
      dx > 1e-6 ? size.w / 2 / dx : Number.POSITIVE_INFINITY,
      dy > 1e-6 ? size.h / 2 / dy : Number.POSITIVE_INFINITY,
    ) + END_MM;
  const room = length / 2 - half;
  if (room < 0) return undefined;
  const own = new Set([leg.fragment.id]);
  let best: { at: Vec; cost: number } | undefined;
  const steps = Math.ceil(length / STEP_MM);
  for (let i = 0; i <= steps; i++) {
    for (const sign of i === 0 ? [1] : [1, -1]) {
      const s = aim * length + sign * i * STEP_MM;
      if (s < half || s > length - half) continue;
      const at = between(p, q, s / length);
      const box = boxAt(at[0], at[1], size.w, size.h);
      if (!to.isFree(box) || nodes.some((n) => holds(grow(box, 0.4), n))) continue;
      const cost = to.cost(grow(box, NEAR_MM), own) + (i * STEP_MM * COST.per10Mm) / 10;
      if (!best || cost < best.cost) best = { at, cost };
    }
    if (best && best.cost <= (i * STEP_MM * COST.per10Mm) / 10) break;
  }
  return best?.at;
}

/** Beside the middle of a leg that is too short to carry its plate. */
function besideLeg(leg: TagLeg, size: { w: number; h: number }, to: Obstacles, nodes: readonly Vec[]): Vec | undefined {
  const [x, y] = between(leg.p, leg.q, 0.5);
  const dx = size.w / 2 + BESIDE_MM;
  const dy = size.h / 2 + BESIDE_MM;
  let best: { at: Vec; cost: number } | undefined;
  for (const more of [0, 4, 8]) {
    for (const [sx, sy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
      [1, 1],
      [-1, 1],
      [1, -1],
      [-1, -1],
    ] as const) {
      const at: Vec = [x + sx * (dx + more), y + sy * (dy + more)];
      const box = boxAt(at[0], at[1], size.w, size.h);
      if (!to.isFree(box) || nodes.some((n) => holds(grow(box, 0.4), n))) continue;
      const cost = to.cost(box) + more * ASTRAY;
      if (!best || cost < best.cost) best = { at, cost };
    }
  }
  return best?.at;
}

/** What the legs of a stretch may say, best first: with its size, or in a bank and where there is little room its letters. */
function wordsFor(leg: TagLeg, sizes: TagSizes, fineness: Fineness, paper: Paper): TagWords[] {
  const { wish } = leg;
  const full: TagWords = { text: wish.text, size: 'tag', ...plateMm(wish.text, sizes.tag) };
  const unseen = wish.ink === 'cantTell';
  if (fineness === 'close' || (unseen && (fineness === 'usual' || leg.length >= COARSE_UNSEEN * full.w))) return [full];
  const letters = unseen ? `${wish.letters} ?` : wish.letters;
  const short: TagWords = { text: letters, size: 'small', ...plateMm(letters, sizes.small) };
  if (fineness === 'usual') return inBank(leg, paper) ? [short] : [full, short];
  if (leg.length >= COARSE_LEGS * full.w && !inBank(leg, paper)) return [full, short];
  return leg.length >= COARSE_LEAST * short.w ? [short] : [];
}

/**
 * Tags of every stretch of one size: one on the longest leg that shows, nearest its middle, then one each 160 mm.
 * No two overlap, and none covers a node. `nodes` in mm of paper.
 */
export function placeTags(
  byStretch: ReadonlyMap<string, readonly TagLeg[]>,
  paper: Paper,
  sizes: TagSizes,
  fineness: Fineness,
  to: Obstacles,
  nodes: readonly Vec[],
): Placed[] {
  const placed: Placed[] = [];
  // Short stretches have the least choice, so they choose first.
  const order = [...byStretch.values()]
    .map((legs) => [...legs].sort((a, b) => b.length - a.length))
    .sort((a, b) => (a[0]?.length ?? 0) - (b[0]?.length ?? 0));
  const put = (leg: TagLeg, words: TagWords, at: Vec): void => {
    const box = boxAt(at[0], at[1], words.w, words.h);
    to.claim(box);
    placed.push({ id: leg.fragment.id, items: [itemAt(leg, words, at, paper)], box });
  };
  /** Puts tags that say this on the legs; false where none of them has room. */
  const tell = (legs: readonly TagLeg[], words: TagWords): boolean => {
    const reach = grow(around(legs), 2 * words.w + REACH_MM);
    const near = nodes.filter((n) => holds(reach, n));
    let told = false;
    for (const leg of legs) {
      const n = told ? Math.floor(leg.length / EVERY_MM) : Math.max(1, Math.ceil(leg.length / EVERY_MM));
      for (let i = 0; i < n; i++) {
        const at = onLeg(leg, (i + 0.5) / n, words, to, near);
        if (at) {
          put(leg, words, at);
          told = true;
        }
      }
      if (told && leg.length < EVERY_MM) break;
    }
    return told;
  };
  for (const legs of order) {
    const [longest] = legs;
    if (!longest) continue;
    const may = wordsFor(longest, sizes, fineness, paper);
    if (may.some((words) => tell(legs, words)) || fineness === 'coarse') continue;
    const [words] = may;
    if (!words) continue;
    const reach = grow(around(legs), 2 * words.w + REACH_MM);
    const at = besideLeg(
      longest,
      words,
      to,
      nodes.filter((n) => holds(reach, n)),
    );
    if (at) put(longest, words, at);
  }
  return placed;
}

function around(legs: readonly TagLeg[]): Box {
  const xs = legs.flatMap((l) => [l.p[0], l.q[0]]);
  const ys = legs.flatMap((l) => [l.p[1], l.q[1]]);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}
