import { wallSide } from '../../geometry/hosting.ts';
import { add, direction, dot, scale, sub, turned } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { Vec, View } from '../display-list.ts';

/** How a view lays the house on its plane. */
export interface Plane {
  readonly view: View;
  readonly storey: string;
  at(p: Xyz): Vec;
  /** Towards the reader: height in a plan, distance out of the face on a wall. */
  toReader(p: Xyz): number;
}

export interface FacePlane extends Plane {
  /** To the right as one faces the wall; across the plane is counted from the wall's end on the left. */
  readonly right: Xy;
  readonly out: Xy;
  readonly from: number;
  readonly upTo: number;
  readonly floorZ: number;
  readonly ceilingZ: number;
}

/** Degrees by which the house lies turned on the plane of a view; a face is its own. */
export const turnOf = (view: View): number => (view.kind === 'plan' ? (view.turnDeg ?? 0) : 0);

export const viewKey = (view: View): string => {
  if (view.kind === 'face') return `face:${view.wall}:${view.side}`;
  return view.turnDeg ? `plan:${view.storey}:${view.turnDeg}` : `plan:${view.storey}`;
};

/** A wall's side seen from its room; undefined where the wall or its storey is gone. */
export function facePlane(plan: Plan, wallId: string, side: 'left' | 'right'): FacePlane | undefined {
  const wall = plan.walls[wallId];
  const storey = wall && plan.storeys[wall.storey];
  if (!wall || !storey) return undefined;
  const face = wallSide(wall, side);
  const right = side === 'left' ? { x: -face.along.x, y: -face.along.y } : face.along;
  const origin = side === 'left' ? add(face.start, scale(face.along, face.lengthMm)) : face.start;
  return {
    view: { kind: 'face', wall: wallId, side },
    storey: storey.id,
    right,
    out: face.out,
    from: 0,
    upTo: face.lengthMm,
    floorZ: storey.floorMm,
    ceilingZ: storey.floorMm + (wall.heightMm ?? storey.ceilingMm),
    at: (p) => [dot(sub(p, origin), right), p.z],
    toReader: (p) => dot(sub(p, origin), face.out),
  };
}

export function planPlane(storey: string, turnDeg = 0): Plane {
  if (turnDeg === 0) {
    return { view: { kind: 'plan', storey }, storey, at: (p) => [p.x, p.y], toReader: (p) => p.z };
  }
  const way = direction(turnDeg);
  return {
    view: { kind: 'plan', storey, turnDeg },
    storey,
    at(p) {
      const { x, y } = turned(p, way);
      return [x, y];
    },
    toReader: (p) => p.z,
  };
}

/** Undefined where the wall looked at, or its storey, is gone. */
export const planeOf = (plan: Plan, view: View): Plane | FacePlane | undefined =>
  view.kind === 'plan' ? planPlane(view.storey, view.turnDeg) : facePlane(plan, view.wall, view.side);
