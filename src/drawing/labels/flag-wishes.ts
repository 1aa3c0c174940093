import type { Fragment, Wish } from '../display-list.ts';
import type { Paper } from './paper.ts';

export type FlagWish = Extract<Wish, { w: 'flag' }>;

export interface Wished {
  readonly fragment: Fragment;
  readonly wish: FlagWish;
}

/** Rises and drops nearer than this on paper are said in one flag. */
const TOGETHER_MM = 9;
/** More levels than this on one line and the words are parted. */
const ON_ONE_LINE = 3;

function levels(wished: readonly Wished[]): string[] {
  const sorted = wished.flatMap(({ wish }) => (wish.riser ? [wish.riser] : [])).sort((p, q) => q.z - p.z);
  const byLevel = new Map<string, string[]>();
  for (const { letters, level } of sorted) byLevel.set(level, [...(byLevel.get(level) ?? []), letters]);
  return [...byLevel].map(([level, letters]) => `${[...new Set(letters)].join(', ')} ${level}`);
}

/** "down: G 1180, K 700, H 270" over "HR 210, HF 150"; rises and drops each on a line where there are both. */
function together(wished: readonly Wished[]): FlagWish {
  const [first] = wished as [Wished, ...Wished[]];
  const ups = levels(wished.filter(({ wish }) => wish.riser?.up));
  const downs = levels(wished.filter(({ wish }) => !wish.riser?.up));
  const base = { ...first.wish, rank: 2 };
  if (ups.length > 0 && downs.length > 0)
    return { ...base, what: `down: ${downs.join(', ')}`, how: `up: ${ups.join(', ')}` };
  const [way, all] = ups.length > 0 ? ['up', ups] : ['down', downs];
  const rest = all.slice(ON_ONE_LINE);
  return {
    ...base,
    what: `${way}: ${all.slice(0, ON_ONE_LINE).join(', ')}${rest.length > 0 ? ',' : ''}`,
    how: rest.length > 0 ? rest.join(', ') : null,
  };
}

/** Flags that are asked for, those of rises and drops at one place as one, in order of rank. */
export function flagsOf(fragments: readonly Fragment[], paper: Paper): Wished[] {
  const plain: Wished[] = [];
  const clusters: Wished[][] = [];
  for (const fragment of fragments) {
    for (const wish of fragment.wishes) {
      if (wish.w !== 'flag') continue;
      if (!wish.riser) {
        plain.push({ fragment, wish });
        continue;
      }
      const [x, y] = paper.at(wish.at, wish.spread);
      const near = ({ wish: w }: Wished): boolean => {
        const [px, py] = paper.at(w.at, w.spread);
        return Math.hypot(px - x, py - y) < TOGETHER_MM;
      };
      const mine: Wished[] = [{ fragment, wish }];
      for (let i = clusters.length - 1; i >= 0; i--) {
        if (clusters[i]?.some(near)) mine.unshift(...(clusters.splice(i, 1)[0] ?? []));
      }
      clusters.push(mine);
    }
  }
  const risers = clusters.flatMap((cluster): Wished[] => {
    const [first] = cluster;
    if (!first) return [];
    return [cluster.length === 1 ? first : { fragment: first.fragment, wish: together(cluster) }];
  });
  return [...plain, ...risers].sort((a, b) => a.wish.rank - b.wish.rank);
}
