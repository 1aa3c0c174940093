import { wallSide } from '../../geometry/hosting.ts';
import { dot } from '../../geometry/vec.ts';
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
  /** To the right as one faces the wall. Across the plane a place has the same figure as along this line in plan. */
  readonly right: Xy;
  readonly out: Xy;
  /** The wall's ends across the plane, lesser first. */
  readonly from: number;
  readonly upTo: number;
  readonly floorZ: number;
  readonly ceilingZ: number;
}

export const viewKey = (view: View): string =>
  view.kind === 'plan' ? `plan:${view.storey}` : `face:${view.wall}:${view.side}`;

/** A wall's side seen from its room; undefined where the wall or its storey is gone. */
export function facePlane(plan: Plan, wallId: string, side: 'left' | 'right'): FacePlane | undefined {
  const wall = plan.walls[wallId];
  const storey = wall && plan.storeys[wall.storey];
  if (!wall || !storey) return undefined;
  const face = wallSide(wall, side);
  const right = side === 'left' ? { x: -face.along.x, y: -face.along.y } : face.along;
  const level = dot(face.start, face.out);
  const ends = [dot(wall.a, right), dot(wall.b, right)];
  return {
    view: { kind: 'face', wall: wallId, side },
    storey: storey.id,
    right,
    out: face.out,
    from: Math.min(...ends),
    upTo: Math.max(...ends),
    floorZ: storey.floorMm,
    ceilingZ: storey.floorMm + (wall.heightMm ?? storey.ceilingMm),
    at: (p) => [p.x * right.x + p.y * right.y, p.z],
    toReader: (p) => p.x * face.out.x + p.y * face.out.y - level,
  };
}

export function planPlane(storey: string): Plane {
  return {
    view: { kind: 'plan', storey },
    storey,
    at: (p) => [p.x, p.y],
    toReader: (p) => p.z,
  };
}
