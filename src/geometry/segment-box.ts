import type { Xyz } from '../plan/records/parts.ts';
import type { Box3 } from './boxes.ts';
import { alongLine, type Line3 } from './segments.ts';
import { distance3 } from './vec.ts';

/** Nearest of a segment to a box. `t`: how far along the segment; `distance` 0 where it goes in. */
export interface ToBox {
  readonly distance: number;
  readonly t: number;
  readonly onLine: Xyz;
  readonly onBox: Xyz;
}

const clamp = (n: number, lo: number, hi: number): number => Math.min(hi, Math.max(lo, n));

export function nearestInBox(p: Xyz, box: Box3): Xyz {
  return {
    x: clamp(p.x, box.minX, box.maxX),
    y: clamp(p.y, box.minY, box.maxY),
    z: clamp(p.z, box.minZ, box.maxZ),
  };
}

const SIDES = [
  ['x', 'minX', 'maxX'],
  ['y', 'minY', 'maxY'],
  ['z', 'minZ', 'maxZ'],
] as const;

/** Where the segment passes the planes of the box's faces: between two of these its distance is one parabola. */
function breaks(line: Line3, box: Box3): number[] {
  const at = [0, 1];
  for (const [axis, min, max] of SIDES) {
    const d = line.b[axis] - line.a[axis];
    if (d === 0) continue;
    for (const face of [box[min], box[max]]) at.push((face - line.a[axis]) / d);
  }
  return at.filter((t) => t >= 0 && t <= 1).sort((p, q) => p - q);
}

/** Lowest point of the squared distance over one stretch, on which every axis is below, in or above the box throughout. */
function lowest(line: Line3, box: Box3, from: number, to: number): number {
  const middle = alongLine(line, (from + to) / 2);
  let [slope, curve] = [0, 0];
  for (const [axis, min, max] of SIDES) {
    const face = middle[axis] < box[min] ? box[min] : middle[axis] > box[max] ? box[max] : undefined;
    if (face === undefined) continue;
    const d = line.b[axis] - line.a[axis];
    slope += d * (line.a[axis] - face);
    curve += d * d;
  }
  return curve === 0 ? (from + to) / 2 : clamp(-slope / curve, from, to);
}

/** Shortest distance between a segment and a box along the axes, exact. */
export function segmentToBox(line: Line3, box: Box3): ToBox {
  const at = breaks(line, box);
  let best: ToBox | undefined;
  for (const [i, from] of at.entries()) {
    const t = lowest(line, box, from, at[i + 1] ?? from);
    const onLine = alongLine(line, t);
    const onBox = nearestInBox(onLine, box);
    const distance = distance3(onLine, onBox);
    if (!best || distance < best.distance) best = { distance, t, onLine, onBox };
  }
  if (!best) throw new RangeError('a segment with a place that is not a number');
  return best;
}
