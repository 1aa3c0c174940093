import type { Vec } from '../display-list.ts';
import { encloses } from '../labels/paper.ts';
import type { IsoDrawing } from './iso-drawing.ts';

export interface IsoHit {
  readonly map: 'legs' | 'stretches' | 'nodes' | 'items' | 'points';
  readonly id: string;
}

/** Parts of the reach of a finger: what is small must be aimed at, so that legs stay easy to hit. */
const ITEM = { reach: 0.8, before: 0.35 };
const NODE = { reach: 0.4, before: 0.2, clear: 2.2 };
const POINT = 0.6;

function fromLine(p: Vec, a: Vec, b: Vec): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / l2));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

const apart = (p: Vec, q: Vec): number => Math.hypot(p[0] - q[0], p[1] - q[1]);

/**
 * What lies under a place of the plane, the most meant first: something in line, a corner that is aimed at, the nearest pipe,
 * of two that are as near the one in front, then the thing behind. `reachMm`: how far the hand can be off.
 */
export function isoHits(drawing: IsoDrawing, at: Vec, reachMm: number): IsoHit[] {
  const found: (IsoHit & { worth: number; near: number })[] = [];
  for (const { id, at: place } of drawing.items) {
    const d = apart(at, place);
    if (d <= ITEM.reach * reachMm) found.push({ map: 'items', id, worth: d - ITEM.before * reachMm, near: 0 });
  }
  const nodes = new Set<string>();
  for (const leg of drawing.legs) {
    const d = fromLine(at, leg.a, leg.b);
    if (d > reachMm) continue;
    found.push({ map: leg.map, id: leg.record.id, worth: d, near: leg.readerA + leg.readerB });
    if (leg.lengthMm < NODE.clear * reachMm) continue;
    for (const [id, place] of [
      [leg.record.a, leg.a],
      [leg.record.b, leg.b],
    ] as const) {
      const far = apart(at, place);
      if (far > NODE.reach * reachMm || nodes.has(id)) continue;
      nodes.add(id);
      found.push({ map: 'nodes', id, worth: far - NODE.before * reachMm, near: 0 });
    }
  }
  for (const f of drawing.fragments) {
    if (f.map !== 'points') continue;
    const inside = f.items.some((i) => i.t === 'area' && i.rings.some((ring) => encloses(ring, at)));
    if (inside) found.push({ map: 'points', id: f.id, worth: POINT * reachMm, near: 0 });
  }
  return found
    .sort((p, q) => p.worth - q.worth || q.near - p.near || (p.id < q.id ? -1 : 1))
    .map(({ map, id }) => ({ map, id }));
}
