import type { Plan } from '../plan/plan.ts';
import type { HeightRef } from '../plan/records/parts.ts';
import { connectionPlace } from './hosting.ts';

/** z above the datum: the figure drawn, and the bounds between which it lies where it was assumed. */
export interface Height {
  readonly z: number;
  readonly lo: number;
  readonly hi: number;
}

const MAX_DEPTH = 8;
const at = (z: number): Height => ({ z, lo: z, hi: z });

/** Finished floor of a storey or room above the datum; undefined where `of` names neither. */
export function floorZ(plan: Plan, of: string): number | undefined {
  const room = plan.rooms[of];
  const storey = plan.storeys[room ? room.storey : of];
  return storey && storey.floorMm + (room?.floorMm ?? 0);
}

/** Underside of the ceiling of a storey or room above the datum. A room's own ceiling is taken from its own floor. */
export function ceilingZ(plan: Plan, of: string): number | undefined {
  const room = plan.rooms[of];
  const storey = plan.storeys[room ? room.storey : of];
  const floor = floorZ(plan, of);
  return storey && floor !== undefined ? floor + (room?.ceilingMm ?? storey.ceilingMm) : undefined;
}

function base(plan: Plan, h: HeightRef, depth: number): Height | undefined {
  if (h.from === 'datum') return at(0);
  if (h.of === null || depth > MAX_DEPTH) return undefined;
  if (h.from === 'floor' || h.from === 'ceiling') {
    const z = h.from === 'floor' ? floorZ(plan, h.of) : ceilingZ(plan, h.of);
    return z === undefined ? undefined : at(z);
  }
  if (h.from === 'connection') {
    const place = h.connection === undefined ? undefined : connectionPlace(plan, h.of, h.connection, depth + 1);
    return place && { z: place.at.z, lo: place.zLo, hi: place.zHi };
  }
  const v = plan.voids[h.of];
  const ref = h.from === 'voidTop' ? v?.top : v?.bottom;
  return ref ? resolveHeight(plan, ref, depth + 1) : undefined;
}

/**
 * z of a height. Undefined where it leans on something that is not there, was never told, or leans on itself.
 * A reference with `assumed` bounds widens the interval by them.
 */
export function resolveHeight(plan: Plan, h: HeightRef, depth = 0): Height | undefined {
  const b = base(plan, h, depth);
  if (!b) return undefined;
  const lo = h.assumed ? Math.min(h.assumed.lo, h.mm) : h.mm;
  const hi = h.assumed ? Math.max(h.assumed.hi, h.mm) : h.mm;
  return { z: b.z + h.mm, lo: b.lo + lo, hi: b.hi + hi };
}
