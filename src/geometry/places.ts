import type { Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import type { PlanNode } from '../plan/records/pipework.ts';
import { resolveHeight } from './heights.ts';
import { connectionPlace } from './hosting.ts';
import { distance3 } from './vec.ts';

/** Where a node is; zLo and zHi bound its height where that was assumed. */
export interface Place {
  readonly at: Xyz;
  readonly zLo: number;
  readonly zHi: number;
  readonly storey: string;
}

/** Place of a node; undefined where it leans on something that is gone or has no height. */
export function nodePlace(plan: Plan, node: PlanNode): Place | undefined {
  if (node.place.on === 'connection') {
    const place = connectionPlace(plan, node.place.point, node.place.connection);
    const storey = plan.points[node.place.point]?.storey;
    return place && storey !== undefined ? { at: place.at, zLo: place.zLo, zHi: place.zHi, storey } : undefined;
  }
  const h = resolveHeight(plan, node.place.height);
  return h && { at: { x: node.place.x, y: node.place.y, z: h.z }, zLo: h.lo, zHi: h.hi, storey: node.place.storey };
}

/** Two ends set from one height move together, so their difference is exact however uncertain that height is. */
function sameReference(plan: Plan, a: PlanNode, b: PlanNode): boolean {
  const ha = a.place.on === 'storey' ? a.place.height : undefined;
  const hb = b.place.on === 'storey' ? b.place.height : undefined;
  if (ha && hb) {
    return ha.from === hb.from && ha.of === hb.of && ha.connection === hb.connection && ha.mm === hb.mm;
  }
  if (!ha && !hb && a.place.on === 'connection' && b.place.on === 'connection') return a.place.point === b.place.point;
  const h = ha ?? hb;
  const c = a.place.on === 'connection' ? a.place : b.place.on === 'connection' ? b.place : undefined;
  return h?.from === 'connection' && h.assumed === undefined && c !== undefined && h.of === c.point && plan.points[c.point] !== undefined;
}

/** Straight length between two nodes with its bounds; undefined where one of them has no place. */
export function lengthBetween(plan: Plan, a: PlanNode, b: PlanNode): { mm: number; lo: number; hi: number } | undefined {
  const pa = nodePlace(plan, a);
  const pb = nodePlace(plan, b);
  if (!pa || !pb) return undefined;
  const mm = distance3(pa.at, pb.at);
  if (sameReference(plan, a, b)) return { mm, lo: mm, hi: mm };
  const flat = Math.hypot(pa.at.x - pb.at.x, pa.at.y - pb.at.y);
  const most = Math.max(Math.abs(pa.zHi - pb.zLo), Math.abs(pb.zHi - pa.zLo));
  const overlap = pa.zLo <= pb.zHi && pb.zLo <= pa.zHi;
  const least = overlap ? 0 : Math.min(Math.abs(pa.zLo - pb.zHi), Math.abs(pb.zLo - pa.zHi));
  return { mm, lo: Math.hypot(flat, least), hi: Math.hypot(flat, most) };
}
