import type { FlueDistance, FlueFace } from '../../report/flue-face.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { State } from '../../report/section.ts';

/** A distance by a name that stays its own while the terminal is moved. */
export interface KeyedDistance {
  readonly key: string;
  readonly distance: FlueDistance;
}

const RANK: Readonly<Record<State, number>> = { stop: 0, check: 1, cantTell: 2, note: 3, pass: 4, none: 5 };

const MM_IN: Readonly<Record<string, number>> = { mm: 1, m: 1000, cm: 10 };

/** A length in mm at its lowest; undefined where its unit is none of length. */
export function leastMm(q: Quantity): number | undefined {
  const one = MM_IN[q.unit];
  return one === undefined ? undefined : q.lo * one;
}

/** How much more there is than is wanted; nothing wanted is more than enough. */
function margin({ found, wanted }: FlueDistance): number {
  const [has, needs] = [leastMm(found), wanted && leastMm(wanted)];
  return has === undefined || needs === null || needs === undefined ? Number.POSITIVE_INFINITY : has - needs;
}

/** The distances of a terminal: what stops first, then by what is over or short. Same face, same order. */
export function worstFirst(face: FlueFace): readonly KeyedDistance[] {
  const seen = new Map<string, number>();
  const keyed = face.distances.map((distance) => {
    const name = `${distance.row}|${distance.ids.join(',')}|${distance.shows}`;
    const n = (seen.get(name) ?? 0) + 1;
    seen.set(name, n);
    return { key: `${name}|${n}`, distance };
  });
  const byMargin = (p: FlueDistance, q: FlueDistance): number => {
    const [m, n] = [margin(p), margin(q)];
    return m === n ? 0 : m - n;
  };
  return keyed.sort(
    (p, q) =>
      RANK[p.distance.state] - RANK[q.distance.state] ||
      byMargin(p.distance, q.distance) ||
      (p.key < q.key ? -1 : p.key > q.key ? 1 : 0),
  );
}

/** Terminals as they are offered: the worst first, then as they stand in the report. */
export const facesWorstFirst = (faces: readonly FlueFace[]): readonly FlueFace[] =>
  [...faces].sort((p, q) => RANK[p.state] - RANK[q.state]);

/** A figure of it was read on no page. */
export const isUnverified = ({ found, wanted }: FlueDistance): boolean =>
  found.sureness === 'memory' || wanted?.sureness === 'memory';
