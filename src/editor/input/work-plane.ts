import type { Vec, View } from '../../drawing/display-list.ts';
import { facePlane } from '../../geometry/face-plane.ts';
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
  const face = facePlane(wall, view.side);
  return {
    kind: 'face',
    onto(at) {
      const { s, z } = face.toFace(at);
      return [s, z];
    },
    depth: (at) => face.toFace(at).depth,
    place: ([s, z], depth) => face.toHouse({ s, z, depth }),
  };
}
