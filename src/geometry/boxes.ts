import type { Xy, Xyz } from '../plan/records/parts.ts';

/** An upright box along the axes, mm. */
export interface Box3 {
  readonly minX: number;
  readonly minY: number;
  readonly minZ: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly maxZ: number;
}

/** Smallest box round some places; throws on none. */
export function boxOf(places: readonly Xyz[]): Box3 {
  if (places.length === 0) throw new RangeError('no place to put a box round');
  const along = (pick: (p: Xyz) => number) => places.map(pick);
  const [x, y, z] = [along((p) => p.x), along((p) => p.y), along((p) => p.z)];
  return {
    minX: Math.min(...x),
    minY: Math.min(...y),
    minZ: Math.min(...z),
    maxX: Math.max(...x),
    maxY: Math.max(...y),
    maxZ: Math.max(...z),
  };
}

/** Grown by `mm` on every side. */
export function grow(box: Box3, mm: number): Box3 {
  return {
    minX: box.minX - mm,
    minY: box.minY - mm,
    minZ: box.minZ - mm,
    maxX: box.maxX + mm,
    maxY: box.maxY + mm,
    maxZ: box.maxZ + mm,
  };
}

/** Touching counts. */
export function overlaps(a: Box3, b: Box3): boolean {
  return (
    a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY && a.minZ <= b.maxZ && b.minZ <= a.maxZ
  );
}

/** On the faces counts as inside. */
export function insideBox(p: Xyz, box: Box3): boolean {
  return p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY && p.z >= box.minZ && p.z <= box.maxZ;
}

/** Round some places as seen from above, wider by so much on every side; at no height. Of none: a box that holds nothing. */
export function flatBox(places: readonly Xy[], by = 0): Box3 {
  const [xs, ys] = [places.map((p) => p.x), places.map((p) => p.y)];
  return {
    minX: Math.min(...xs) - by,
    minY: Math.min(...ys) - by,
    minZ: 0,
    maxX: Math.max(...xs) + by,
    maxY: Math.max(...ys) + by,
    maxZ: 0,
  };
}
