import type { Vec, View } from '../../drawing/display-list.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { add, dot, scale, sub } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';

/**
 * The plane a pane looks at. Across and up are its own axes in mm; `depth` is what a pick on it cannot tell: z above the
 * datum in plan, stand-off from the face on a wall side.
 */
export interface WorkPlane {
  readonly kind: 'plan' | 'face';
  onto(at: Xyz): Vec;
  depth(at: Xyz): number;
  place(on: Vec, depth: number): Xyz;
}

const FROM_ABOVE: WorkPlane = {
  kind: 'plan',
  onto: (at) => [at.x, at.y],
  depth: (at) => at.z,
  place: ([x, y], z) => ({ x, y, z }),
};

/** Undefined where the wall looked at is gone. A face is seen from its own side, so across runs to the viewer's right. */
export function workPlane(plan: Plan, view: View): WorkPlane | undefined {
  if (view.kind === 'plan') return FROM_ABOVE;
  const wall = plan.walls[view.wall];
  if (!wall) return undefined;
  const { start, along, out, lengthMm } = wallSide(wall, view.side);
  const right = view.side === 'left' ? scale(along, -1) : along;
  const origin = view.side === 'left' ? add(start, scale(along, lengthMm)) : start;
  return {
    kind: 'face',
    onto: (at) => [dot(sub(at, origin), right), at.z],
    depth: (at) => dot(sub(at, origin), out),
    place: ([s, z], depth) => ({ ...add(add(origin, scale(right, s)), scale(out, depth)), z }),
  };
}
