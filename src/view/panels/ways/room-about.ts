import { wallSide } from '../../../geometry/hosting.ts';
import { dot, sub } from '../../../geometry/vec.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Xy, Xyz } from '../../../plan/records/parts.ts';

/** A wall face that a place looks at: which way it faces, and how far off it is, mm. */
export interface Face {
  readonly out: Xy;
  readonly offMm: number;
}

/** A pipe further from a wall than this does not run along it. */
const ALONG_MM = 400;
const SLACK_MM = 1;

/** Faces of walls that a place stands before, nearest first. */
export function facesAbout(plan: Plan, storey: string, at: Xy): readonly Face[] {
  return Object.values(plan.walls)
    .filter((w) => w.storey === storey)
    .flatMap((wall) =>
      (['left', 'right'] as const).flatMap((side): Face[] => {
        const { start, along, out, lengthMm } = wallSide(wall, side);
        const from = sub(at, start);
        const s = dot(from, along);
        const offMm = dot(from, out);
        return s >= 0 && s <= lengthMm && offMm > -SLACK_MM && offMm < ALONG_MM ? [{ out, offMm }] : [];
      }),
    )
    .sort((a, b) => a.offMm - b.offMm);
}

/** Whether a pipe may go so far without running into a wall, through the floor or through the ceiling. */
export function hasRoom(plan: Plan, storey: string, at: Xyz, by: Xyz, radiusMm: number): boolean {
  const record = plan.storeys[storey];
  if (!record) return false;
  for (const level of [record.floorMm, record.floorMm + record.ceilingMm]) {
    const [before, after] = [at.z - level, at.z + by.z - level];
    if (Math.sign(before) !== Math.sign(after) || (by.z !== 0 && Math.abs(after) < radiusMm)) return false;
  }
  return facesAbout(plan, storey, at).every(({ out, offMm }) => {
    const nearer = -dot(out, by);
    return nearer <= 0 || offMm - nearer >= radiusMm;
  });
}
