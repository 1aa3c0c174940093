import type { Box3 } from '../../geometry/boxes.ts';
import type { Xyz } from '../../plan/records/parts.ts';

/** Between two bodies, mm: as drawn, and the bounds it lies between where a height was assumed; the nearest places of both. */
export interface Gap {
  readonly mm: number;
  readonly lo: number;
  readonly hi: number;
  readonly from: Xyz;
  readonly to: Xyz;
}

/** How much higher (above zero) or lower than drawn the far body may lie, seen from the near one. */
export interface Rise {
  readonly lo: number;
  readonly hi: number;
}
export const LEVEL: Rise = { lo: 0, hi: 0 };

/** Between two stretches of one line; 0 where they overlap. */
export const apart = (aLo: number, aHi: number, bLo: number, bHi: number): number => Math.max(0, bLo - aHi, aLo - bHi);

export const overlap = (aLo: number, aHi: number, bLo: number, bHi: number): boolean => aLo < bHi && bLo < aHi;

/**
 * The upright gap as the far body is lifted through a range. It falls to zero and rises again, so that its least is at an
 * end or zero, and its greatest at an end.
 */
function uprightGap(near: Box3, far: Box3, rise: Rise): Pick<Gap, 'mm' | 'lo' | 'hi'> {
  const at = (s: number): number => apart(near.minZ, near.maxZ, far.minZ + s, far.maxZ + s);
  const ends = [at(rise.lo), at(rise.hi)];
  const meets = rise.lo <= near.maxZ - far.minZ && rise.hi >= near.minZ - far.maxZ;
  return { mm: at(0), lo: meets ? 0 : Math.min(...ends), hi: Math.max(...ends, at(0)) };
}

/** Nearest places along one axis: the facing edges, or the middle of what they share. */
function nearest(aLo: number, aHi: number, bLo: number, bHi: number): readonly [number, number] {
  if (bLo >= aHi) return [aHi, bLo];
  if (aLo >= bHi) return [aLo, bHi];
  const middle = (Math.max(aLo, bLo) + Math.min(aHi, bHi)) / 2;
  return [middle, middle];
}

/** Shortest distance between two upright boxes of one frame, with the doubt of their heights. */
export function gapOf(near: Box3, far: Box3, rise: Rise = LEVEL): Gap {
  const flat = Math.hypot(
    apart(near.minX, near.maxX, far.minX, far.maxX),
    apart(near.minY, near.maxY, far.minY, far.maxY),
  );
  const up = uprightGap(near, far, rise);
  const [x0, x1] = nearest(near.minX, near.maxX, far.minX, far.maxX);
  const [y0, y1] = nearest(near.minY, near.maxY, far.minY, far.maxY);
  const [z0, z1] = nearest(near.minZ, near.maxZ, far.minZ, far.maxZ);
  return {
    mm: Math.hypot(flat, up.mm),
    lo: Math.hypot(flat, up.lo),
    hi: Math.hypot(flat, up.hi),
    from: { x: x0, y: y0, z: z0 },
    to: { x: x1, y: y1, z: z1 },
  };
}

/** The same with one axis left out: distances in the face of a wall, in plan, or straight up. */
export function gapWithout(axis: 'Y' | 'Z', near: Box3, far: Box3, rise: Rise = LEVEL): Gap {
  const same = axis === 'Y' ? { minY: near.minY, maxY: near.maxY } : { minZ: near.minZ, maxZ: near.maxZ };
  return gapOf(near, { ...far, ...same }, axis === 'Z' ? LEVEL : rise);
}
