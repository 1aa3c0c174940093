import type { Vec, View } from '../../drawing/display-list.ts';
import { facePlane } from '../../geometry/face-plane.ts';
import { direction, sub3, turned } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';

/**
 * The plane a pane looks at. Across and up are its own axes in mm; `depth` is what a pick on it cannot tell: z above the
 * datum in plan, stand-off from the face on a wall side.
 */
export interface WorkPlane {
  readonly kind: 'plan' | 'face';
  /** The wall and side a face is of. */
  readonly face?: { readonly wall: string; readonly side: 'left' | 'right' };
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

function fromAbove(turnDeg: number): WorkPlane {
  if (turnDeg === 0) return FROM_ABOVE;
  const way = direction(turnDeg);
  const back = { x: way.x, y: -way.y };
  return {
    kind: 'plan',
    onto(at) {
      const { x, y } = turned(at, way);
      return [x, y];
    },
    depth: (at) => at.z,
    place: ([x, y], z) => ({ ...turned({ x, y }, back), z }),
  };
}

/** Undefined where the wall looked at is gone. A face is seen from its own side, so across runs to the viewer's right. */
export function workPlane(plan: Plan, view: View): WorkPlane | undefined {
  if (view.kind === 'plan') return fromAbove(view.turnDeg ?? 0);
  const wall = plan.walls[view.wall];
  if (!wall) return undefined;
  const face = facePlane(wall, view.side);
  return {
    kind: 'face',
    face: { wall: view.wall, side: view.side },
    onto(at) {
      const { s, z } = face.toFace(at);
      return [s, z];
    },
    depth: (at) => face.toFace(at).depth,
    place: ([s, z], depth) => face.toHouse({ s, z, depth }),
  };
}

/** So far across and up as it is seen, as a way in the house. */
export const wayInHouse = (plane: WorkPlane, by: Vec): Xyz => sub3(plane.place(by, 0), plane.place([0, 0], 0));

/** A level way of the house, as it is seen. */
export function wayAsSeen(plane: WorkPlane, way: Xy): Vec {
  const [from, to] = [plane.onto({ x: 0, y: 0, z: 0 }), plane.onto({ ...way, z: 0 })];
  return [to[0] - from[0], to[1] - from[1]];
}

/** Places of the floor on the plane. */
export const floorOnto = (plane: WorkPlane, pts: readonly Xy[]): Vec[] => pts.map((p) => plane.onto({ ...p, z: 0 }));

/** Which way the house lies when it is seen across: 0 in a plan that is not turned, anticlockwise from the sheet's x. */
export function acrossDeg(plane: WorkPlane): number {
  const { x, y } = wayInHouse(plane, [1, 0]);
  return (Math.atan2(y, x) * 180) / Math.PI;
}
