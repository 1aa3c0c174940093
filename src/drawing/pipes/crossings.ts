import RBush from 'rbush';
import type { Vec } from '../display-list.ts';
import type { DrawnLeg } from './drawn-leg.ts';

/** Where a leg is passed in front of, and by which. */
export interface Crossing {
  readonly at: Vec;
  readonly over: DrawnLeg;
}

export interface LegBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly leg: DrawnLeg;
}

export function legIndex(legs: readonly DrawnLeg[]): RBush<LegBox> {
  const index = new RBush<LegBox>();
  index.load(
    legs
      .filter((leg) => !leg.endOn)
      .map((leg) => ({
        minX: Math.min(leg.a[0], leg.b[0]),
        minY: Math.min(leg.a[1], leg.b[1]),
        maxX: Math.max(leg.a[0], leg.b[0]),
        maxY: Math.max(leg.a[1], leg.b[1]),
        leg,
      })),
  );
  return index;
}

/** Parts along both lines at which they cross, away from their ends; undefined where they do not. */
function meet(p: DrawnLeg, q: DrawnLeg): { s: number; t: number } | undefined {
  const [px, py] = [p.b[0] - p.a[0], p.b[1] - p.a[1]];
  const [qx, qy] = [q.b[0] - q.a[0], q.b[1] - q.a[1]];
  const det = px * qy - py * qx;
  if (Math.abs(det) < 1e-6 * p.lengthMm * q.lengthMm) return undefined;
  const [dx, dy] = [q.a[0] - p.a[0], q.a[1] - p.a[1]];
  const s = (dx * qy - dy * qx) / det;
  const t = (dx * py - dy * px) / det;
  return s > 0 && s < 1 && t > 0 && t < 1 ? { s, t } : undefined;
}

/**
 * For each leg, where another passes nearer to the reader. Only where the two clear each other: legs that meet at one
 * level do not pass one behind the other, and a stretch nobody has seen passes nowhere in particular.
 */
export function crossings(
  legs: readonly DrawnLeg[],
  index: RBush<LegBox> = legIndex(legs),
): ReadonlyMap<DrawnLeg, readonly Crossing[]> {
  const found = new Map<DrawnLeg, Crossing[]>();
  for (const p of legs) {
    if (p.endOn || p.map === 'stretches') continue;
    const box = {
      minX: Math.min(p.a[0], p.b[0]),
      minY: Math.min(p.a[1], p.b[1]),
      maxX: Math.max(p.a[0], p.b[0]),
      maxY: Math.max(p.a[1], p.b[1]),
    };
    for (const { leg: q } of index.search(box)) {
      if (q === p || q.map === 'stretches') continue;
      if (q.vertexA === p.vertexA || q.vertexB === p.vertexB || q.vertexA === p.vertexB || q.vertexB === p.vertexA)
        continue;
      const at = meet(p, q);
      if (!at) continue;
      const mine = p.readerA + (p.readerB - p.readerA) * at.s;
      const its = q.readerA + (q.readerB - q.readerA) * at.t;
      if (its - mine <= p.radiusMm + q.radiusMm) continue;
      const crossing = { at: [p.a[0] + (p.b[0] - p.a[0]) * at.s, p.a[1] + (p.b[1] - p.a[1]) * at.s] as const, over: q };
      const there = found.get(p);
      if (there) there.push(crossing);
      else found.set(p, [crossing]);
    }
  }
  return found;
}
