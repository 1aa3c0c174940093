import { add3, distance3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';

/** A pipe that has to step aside by less than two fittings need does it with a set: flat, 45 degrees, flat. */
export interface Aside {
  readonly by: Xyz;
  /** Straight pipe left before and after the set on its leg. */
  readonly clearMm: number;
  /** On which end of its leg the set stands. */
  readonly near: 'from' | 'to';
}

/**
 * Puts the set into the longest leg that goes straight across `by`. Places past it have moved by it. Undefined where no leg
 * is long enough.
 */
export function withSet(pts: readonly Xyz[], { by, clearMm, near }: Aside): Xyz[] | undefined {
  const mm = length3(by);
  if (mm < COINCIDENT_MM) return [...pts];
  const side = unit3(by);
  let best = -1;
  let longest = mm + 2 * clearMm;
  for (let i = 1; i < pts.length; i++) {
    const [a, b] = [pts[i - 1] as Xyz, pts[i] as Xyz];
    const on = unit3(sub3(b, a));
    const across = Math.abs(on.x * side.x + on.y * side.y + on.z * side.z) < 1e-3;
    if (across && distance3(a, b) > longest) [best, longest] = [i, distance3(a, b)];
  }
  if (best < 0) return undefined;
  const [a, b] = [pts[best - 1] as Xyz, pts[best] as Xyz];
  const on = unit3(sub3(b, a));
  const from = near === 'from' ? clearMm : longest - clearMm - mm;
  const first = add3(a, scale3(on, from));
  const second = add3(add3(first, scale3(on, mm)), by);
  return [...pts.slice(0, best), first, second, ...pts.slice(best).map((p) => add3(p, by))];
}
