import type { Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import type { Xy, Xyz } from '../plan/records/parts.ts';
import { dot, left, sub, unit } from './vec.ts';

/** Records that stand in the case that is looked at. Left out: all. */
export interface Standing {
  has(id: string): boolean;
}

/** A place seen from a wall: u along its centreline from `a`, v off it to the left, z above the datum. */
export interface InWall {
  readonly u: number;
  readonly v: number;
  readonly z: number;
}

export const wallLength = (wall: Wall): number => Math.hypot(wall.b.x - wall.a.x, wall.b.y - wall.a.y);

export function intoWall(wall: Wall, p: Xyz): InWall {
  const along = unit(sub(wall.b, wall.a));
  const d = sub(p, wall.a);
  return { u: dot(d, along), v: dot(d, left(along)), z: p.z };
}

export function outOfWall(wall: Wall, u: number, v: number): Xy {
  const along = unit(sub(wall.b, wall.a));
  const side = left(along);
  return { x: wall.a.x + along.x * u + side.x * v, y: wall.a.y + along.y * u + side.y * v };
}

/** From the finished floor to its own top, or to the storey's ceiling; undefined where its storey is gone. */
export function wallHeights(plan: Plan, wall: Wall): { readonly bottom: number; readonly top: number } | undefined {
  const storey = plan.storeys[wall.storey];
  if (!storey) return undefined;
  return { bottom: storey.floorMm, top: storey.floorMm + (wall.heightMm ?? storey.ceilingMm) };
}
