import type { Fragment, Wish } from '../display-list.ts';
import type { Fineness } from './fineness.ts';
import type { Paper } from './paper.ts';
import { eachFrom, rangeFrom, together } from './riser-words.ts';

export type FlagWish = Extract<Wish, { w: 'flag' }>;

/** First what, in bold, then how, line by line. */
export type FlagLines = readonly [string, ...string[]];

export interface Wished {
  readonly fragment: Fragment;
  readonly wish: FlagWish;
  /** What may be said, the fullest first: what finds no place is said shorter. */
  readonly says: readonly FlagLines[];
}

/** Rises and drops nearer than this on paper are said in one flag. */
const TOGETHER_MM = 9;
/** What is said of an appliance. */
const APPLIANCE = 1;

const linesOf = ({ what, how }: FlagWish): FlagLines => (how === null ? [what] : [what, how]);

const plainly = (fragment: Fragment, wish: FlagWish): Wished => ({
  fragment,
  wish,
  says: wish.how === null ? [[wish.what]] : [linesOf(wish), [wish.what]],
});

/** Rises and drops that stand together on paper, as one. */
function byPlace(risers: readonly Wished[], paper: Paper): Wished[] {
  const clusters: Wished[][] = [];
  for (const one of risers) {
    const [x, y] = paper.at(one.wish.at, one.wish.spread);
    const near = ({ wish: w }: Wished): boolean => {
      const [px, py] = paper.at(w.at, w.spread);
      return Math.hypot(px - x, py - y) < TOGETHER_MM;
    };
    const mine: Wished[] = [one];
    for (let i = clusters.length - 1; i >= 0; i--) {
      if (clusters[i]?.some(near)) mine.unshift(...(clusters.splice(i, 1)[0] ?? []));
    }
    clusters.push(mine);
  }
  return clusters.flatMap((cluster): Wished[] => {
    const [first] = cluster;
    if (!first) return [];
    if (cluster.length === 1) return [first];
    const wishes = cluster.map((c) => c.wish);
    return [plainly(first.fragment, together(first.wish, wishes))];
  });
}

/** Those that leave one point are said in its own flag where it has one, else in one flag of theirs. */
function byPoint(plain: Wished[], risers: readonly Wished[], fineness: Fineness): { said: Wished[]; alone: Wished[] } {
  const at = new Map<string, Wished[]>();
  const alone: Wished[] = [];
  for (const one of risers) {
    const point = one.wish.riser?.from?.point;
    if (point === undefined) alone.push(one);
    else at.set(point, [...(at.get(point) ?? []), one]);
  }
  const said: Wished[] = [];
  for (const [point, mine] of at) {
    const own = plain.findIndex((p) => p.fragment.map === 'points' && p.fragment.id === point);
    const [first] = mine;
    if (!first) continue;
    const wishes = mine.map((m) => m.wish);
    const may = fineness === 'close' ? [eachFrom(wishes), rangeFrom(wishes)] : [rangeFrom(wishes)];
    const flag = plain[own];
    if (flag) {
      const what = flag.wish.how === null ? flag.wish.what : `${flag.wish.what}, ${flag.wish.how}`;
      plain[own] = { ...flag, says: [...may.map((lines): FlagLines => [what, ...lines]), ...flag.says] };
    } else if (mine.length === 1) alone.push(first);
    else said.push({ ...first, says: may.flatMap(([line, ...more]): FlagLines[] => (line ? [[line, ...more]] : [])) });
  }
  return { said, alone };
}

/**
 * Flags that are asked for, in order of rank. What rises and drops at one point is said of that point, close to with
 * every level; at a coarse scale only appliances say what they are.
 */
export function flagsOf(fragments: readonly Fragment[], paper: Paper, fineness: Fineness): Wished[] {
  const plain: Wished[] = [];
  const risers: Wished[] = [];
  for (const fragment of fragments) {
    for (const wish of fragment.wishes) {
      if (wish.w === 'flag') (wish.riser ? risers : plain).push(plainly(fragment, wish));
    }
  }
  if (fineness === 'coarse') {
    return plain
      .filter(({ wish }) => wish.rank === APPLIANCE)
      .map(({ fragment, wish }) => ({ fragment, wish, says: [[wish.what]] }));
  }
  const { said, alone } = byPoint(plain, risers, fineness);
  return [...plain, ...said, ...byPlace(alone, paper)].sort((a, b) => a.wish.rank - b.wish.rank);
}
