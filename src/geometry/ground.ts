import type { Plan } from '../plan/plan.ts';
import type { Ground } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';

export interface GroundLevel {
  readonly ground: string;
  /** Above the datum, evenly between the places that were levelled. */
  readonly z: number;
  /** From the place to the line that was levelled: far from it the figure says little. */
  readonly awayMm: number;
}

/** The storey whose floor lies nearest to a line of levels: where it is drawn. Undefined where there is no storey. */
export function groundStorey(plan: Plan, ground: Ground): string | undefined {
  const z = ground.line.reduce((sum, p) => sum + p.z, 0) / ground.line.length;
  const off = (floorMm: number): number => Math.abs(floorMm - z);
  return Object.values(plan.storeys).sort((p, q) => off(p.floorMm) - off(q.floorMm) || (p.id < q.id ? -1 : 1))[0]?.id;
}

/** Level of the ground nearest to a place; undefined where nobody levelled any. */
export function groundAt(plan: Plan, p: Xy): GroundLevel | undefined {
  let nearest: GroundLevel | undefined;
  for (const { id, line } of Object.values(plan.grounds)) {
    for (const [i, a] of line.entries()) {
      const b = line[i + 1] ?? a;
      const d = { x: b.x - a.x, y: b.y - a.y };
      const l2 = d.x * d.x + d.y * d.y;
      const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * d.x + (p.y - a.y) * d.y) / l2));
      const awayMm = Math.hypot(p.x - a.x - t * d.x, p.y - a.y - t * d.y);
      if (!nearest || awayMm < nearest.awayMm) nearest = { ground: id, z: a.z + t * (b.z - a.z), awayMm };
    }
  }
  return nearest;
}
