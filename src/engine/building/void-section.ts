import { signedArea } from '../../geometry/outlines.ts';
import { cross, dot, left, length, sub, unit } from '../../geometry/vec.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import type { VoidPart } from './void-parts.ts';

const MM2_IN_M2 = 1_000_000;

/**
 * Cross-section of a void square to the pipe that runs in it, m2: of one that stands upright its plan, of one that lies
 * its width across the longest piece by its height. Null where its heights are not known.
 */
export function sectionM2(plan: Plan, space: Void, parts: readonly VoidPart[]): number | null {
  const longest = parts.reduce((most, p) => (p.lengthMm > most.lengthMm ? p : most));
  const { a, b } = longest.pipe.body;
  const flat = sub(b, a);
  if (length(flat) < Math.abs(b.z - a.z)) {
    const holes = space.holes.reduce((sum, h) => sum + Math.abs(signedArea(h)), 0);
    return (Math.abs(signedArea(space.outline)) - holes) / MM2_IN_M2;
  }
  const heights = voidHeights(plan, space);
  if (!heights) return null;
  const across = left(unit(flat));
  const at = space.outline.map((p) => dot(p, across));
  return ((Math.max(...at) - Math.min(...at)) * (heights.top - heights.bottom)) / MM2_IN_M2;
}

/** Longest side of an outline, as a unit vector: the way a box runs, or its long side in plan. */
export function longSide(space: Void): { readonly x: number; readonly y: number } {
  const sides = space.outline.map((p, i) => sub(space.outline[(i + 1) % space.outline.length] ?? p, p));
  const most = sides.reduce((a, b) => (length(b) > length(a) ? b : a), sides[0] ?? { x: 1, y: 0 });
  const way = unit(most);
  return cross({ x: 1, y: 0 }, way) < 0 || way.x < -0.5 ? { x: -way.x, y: -way.y } : way;
}
