import type { Plan } from '../plan/plan.ts';
import type { Roof } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';
import { ceilingZ, resolveHeight } from './heights.ts';
import { insideOutline } from './outlines.ts';
import { roomAt } from './rooms.ts';
import { cross, sub, unit } from './vec.ts';

/** z of a roof's plane over a place, whether or not the roof reaches there; undefined where its eaves have no height. */
export function roofPlaneZ(plan: Plan, roof: Roof, p: Xy): number | undefined {
  const eaves = resolveHeight(plan, roof.eaves.height);
  if (!eaves) return undefined;
  const inwards = cross(unit(sub(roof.eaves.b, roof.eaves.a)), sub(p, roof.eaves.a));
  return eaves.z + inwards * Math.tan((roof.pitchDeg * Math.PI) / 180);
}

export interface Overhead {
  readonly z: number;
  /** The roof that bounds it; null where a ceiling does. */
  readonly roof: string | null;
}

/** What is overhead in a storey at a place: the room's ceiling or the lowest roof, whichever is lower. */
export function overhead(plan: Plan, storey: string, p: Xy): Overhead | undefined {
  const ceiling = ceilingZ(plan, roomAt(plan, storey, p)?.rooms[0] ?? storey);
  let lowest: Overhead | undefined = ceiling === undefined ? undefined : { z: ceiling, roof: null };
  for (const roof of Object.values(plan.roofs)) {
    if (roof.storey !== storey || !insideOutline(p, roof.outline)) continue;
    const z = roofPlaneZ(plan, roof, p);
    if (z !== undefined && (!lowest || z < lowest.z)) lowest = { z, roof: roof.id };
  }
  return lowest;
}
