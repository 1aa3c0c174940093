import type { Plan } from '../plan/plan.ts';
import type { HeightRef } from '../plan/records/parts.ts';
import { connectionPlace } from './hosting.ts';

/** How far a figure may lie from what was drawn: `lo` at most 0, `hi` at least 0. */
export interface Doubt {
  readonly lo: number;
  readonly hi: number;
}

/**
 * z above the datum: the figure drawn, and the bounds between which it lies where it was assumed. `doubts` names each
 * thing taken for granted, so that two heights that lean on the same one are known to move together.
 */
export interface Height {
  readonly z: number;
  readonly lo: number;
  readonly hi: number;
  readonly doubts: ReadonlyMap<string, Doubt>;
}

const MAX_DEPTH = 8;
const NONE: ReadonlyMap<string, Doubt> = new Map();
const at = (z: number): Height => ({ z, lo: z, hi: z, doubts: NONE });

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
    return place && { z: place.at.z, lo: place.zLo, hi: place.zHi, doubts: place.doubts };
  }
  const v = plan.voids[h.of];
  const ref = h.from === 'voidTop' ? v?.top : v?.bottom;
  return ref ? resolveHeight(plan, ref, depth + 1, `${h.from} of ${h.of}`) : undefined;
}

/** Heights told in the same words ("to void") are one height, not two that happen to be near each other. */
const sameWords = (h: HeightRef): string =>
  [h.from, h.of, h.connection, h.mm, h.assumed?.lo, h.assumed?.hi].map((part) => part ?? '').join(' ');

/**
 * z of a height. Undefined where it leans on something that is not there, was never told, or leans on itself.
 * A reference with `assumed` bounds widens the interval by them. `owner` is what the assumption belongs to; a node's
 * belongs to its words.
 */
export function resolveHeight(plan: Plan, h: HeightRef, depth = 0, owner?: string): Height | undefined {
  const b = base(plan, h, depth);
  if (!b) return undefined;
  const z = b.z + h.mm;
  if (!h.assumed) return { ...b, z, lo: b.lo + h.mm, hi: b.hi + h.mm };
  const own = { lo: Math.min(h.assumed.lo - h.mm, 0), hi: Math.max(h.assumed.hi - h.mm, 0) };
  const doubts = new Map(b.doubts).set(owner ?? sameWords(h), own);
  return { z, lo: b.lo + h.mm + own.lo, hi: b.hi + h.mm + own.hi, doubts };
}

/** How far `b` is above `a`, with the bounds of that: what both lean on does not count. */
export function riseBetween(a: Height, b: Height): { readonly mm: number; readonly lo: number; readonly hi: number } {
  const mm = b.z - a.z;
  let [lo, hi] = [mm, mm];
  for (const [key, doubt] of a.doubts) {
    if (b.doubts.has(key)) continue;
    lo -= doubt.hi;
    hi -= doubt.lo;
  }
  for (const [key, doubt] of b.doubts) {
    if (a.doubts.has(key)) continue;
    lo += doubt.lo;
    hi += doubt.hi;
  }
  return { mm, lo, hi };
}
