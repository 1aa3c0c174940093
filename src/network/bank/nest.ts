import { add3, dot3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';

export const cross3 = (a: Xyz, b: Xyz): Xyz => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** Cosine above which two ways are one. */
const SAME_WAY = 0.9999;
export const sameWay = (a: Xyz, b: Xyz): boolean => dot3(a, b) > SAME_WAY;
/** One leg turns straight back on the last. */
export const isBack = (a: Xyz, b: Xyz): boolean => dot3(a, b) < -SAME_WAY;
export const isUpright = (way: Xyz): boolean => Math.abs(way.z) > SAME_WAY;

/** Unit way of each leg of a path. */
export const waysOf = (path: readonly Xyz[]): Xyz[] => path.slice(1).map((to, k) => unit3(sub3(to, path[k] as Xyz)));

/** How a row of pipes stands in the bank where it starts: beside each other, or over each other. */
export type RowWay = 'level' | 'upright';

const UP: Xyz = { x: 0, y: 0, z: 1 };

/**
 * Way of the row on the first leg, across it. On an upright first leg it is told by the first leg that goes off it: a level
 * row stays level there. Where there is none, by `aside`, the way the tails of an appliance lie.
 */
export function firstRow(ways: readonly Xyz[], row: RowWay, aside: Xyz = { x: 1, y: 0, z: 0 }): Xyz {
  const first = ways[0] ?? { x: 1, y: 0, z: 0 };
  const off = ways.find((w) => !isUpright(w));
  if (!isUpright(first)) {
    const level = unit3(cross3(UP, first));
    return row === 'level' ? level : unit3(cross3(first, level));
  }
  if (off) return row === 'level' ? unit3(cross3(UP, off)) : unit3({ ...off, z: 0 });
  const flat = Math.hypot(aside.x, aside.y) < 1e-6 ? { x: 1, y: 0, z: 0 } : unit3({ ...aside, z: 0 });
  return row === 'level' ? flat : cross3(UP, flat);
}

/** A way across one leg, carried round the corner by the turn that takes that leg's way to the next one's. */
export function carried(across: Xyz, from: Xyz, to: Xyz): Xyz {
  const axis = cross3(from, to);
  if (sameWay(from, to)) return across;
  const a = unit3(axis);
  const [n1, n2] = [cross3(a, from), cross3(a, to)];
  return add3(scale3(a, dot3(across, a)), scale3(n2, dot3(across, n1)));
}

/** `across` on every leg, from what it is on the first. */
export function carriedAlong(across: Xyz, ways: readonly Xyz[]): Xyz[] {
  const all: Xyz[] = [across];
  for (let k = 1; k < ways.length; k++) all.push(carried(all[k - 1] as Xyz, ways[k - 1] as Xyz, ways[k] as Xyz));
  return all;
}

/**
 * How far from the middle of a corner a pipe turns that lies `across` of the middle on the leg before: what lies along the
 * axis of the turn is kept, the rest goes on the mitre, so that pipes stay as far apart on both sides of the corner.
 */
export function mitred(across: Xyz, from: Xyz, to: Xyz): Xyz {
  if (sameWay(from, to)) return across;
  const a = unit3(cross3(from, to));
  const [n1, n2] = [cross3(a, from), cross3(a, to)];
  const onMitre = dot3(across, n1) / (1 + dot3(n1, n2));
  return add3(scale3(a, dot3(across, a)), scale3(add3(n1, n2), onMitre));
}

/** Corners of a pipe that lies `across` of the middle path on its first leg. As many as the path has. */
export function nested(path: readonly Xyz[], ways: readonly Xyz[], across: Xyz): Xyz[] {
  const on = carriedAlong(across, ways);
  return path.map((p, k) => {
    const [before, after] = [ways[k - 1], ways[k]];
    if (!before) return add3(p, on[0] as Xyz);
    if (!after) return add3(p, on[k - 1] as Xyz);
    return add3(p, mitred(on[k - 1] as Xyz, before, after));
  });
}

/** Distances from the middle of a row of so many, in order. */
export const evenly = (count: number, spacingMm: number): number[] =>
  Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * spacingMm);
