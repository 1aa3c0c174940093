import { add3, dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Rest } from './bank.ts';

/**
 * What is past the parallel part when its first corner steps aside by `by`: a leg takes up what goes along it and hands the
 * rest to the next corner. Undefined where something is held that would have to go along, or a leg would turn round.
 */
export function followed(rest: Rest, by: Xyz): Xyz[] | undefined {
  const old = [rest.at, ...rest.pts];
  const moved: Xyz[] = [add3(rest.at, by)];
  let left = by;
  for (let i = 1; i < old.length; i++) {
    const [a, b] = [old[i - 1] as Xyz, old[i] as Xyz];
    const way = unit3(sub3(b, a));
    left = sub3(left, scale3(way, dot3(left, way)));
    if (length3(left) < COINCIDENT_MM) left = { x: 0, y: 0, z: 0 };
    else if (rest.holds[i - 1]) return undefined;
    const to = add3(b, left);
    if (dot3(sub3(to, moved[i - 1] as Xyz), way) <= COINCIDENT_MM) return undefined;
    moved.push(to);
  }
  return moved;
}
