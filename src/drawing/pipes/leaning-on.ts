import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';

const on = (height: HeightRef, points: ReadonlySet<string>): boolean =>
  height.from === 'connection' && height.of !== null && points.has(height.of);

/** Points and voids whose height is taken from one of some points, over as many steps as it takes, and those points. */
function withLeaning(plan: Plan, points: ReadonlySet<string>): { points: Set<string>; voids: Set<string> } {
  const found = new Set(points);
  const voids = new Set<string>();
  const leans = (height: HeightRef): boolean =>
    on(height, found) ||
    ((height.from === 'voidTop' || height.from === 'voidBottom') && height.of !== null && voids.has(height.of));
  for (let before = -1; before !== found.size + voids.size; ) {
    before = found.size + voids.size;
    for (const v of Object.values(plan.voids)) if ([v.top, v.bottom].some((h) => h && leans(h))) voids.add(v.id);
    for (const { id, place } of Object.values(plan.points)) if (leans(place.height)) found.add(id);
  }
  return { points: found, voids };
}

/** Nodes that stand on points, or take their height from them, before or after these changed. */
export function nodesLeaningOn(before: Plan, after: Plan, points: ReadonlySet<string>): string[] {
  const ids = new Set<string>();
  for (const plan of before.points === after.points ? [after] : [before, after]) {
    const all = withLeaning(plan, points);
    for (const { id, place } of Object.values(plan.nodes)) {
      if (place.on === 'connection') {
        if (all.points.has(place.point)) ids.add(id);
      } else if (on(place.height, all.points) || (place.height.of !== null && all.voids.has(place.height.of))) {
        ids.add(id);
      }
    }
  }
  return [...ids];
}
