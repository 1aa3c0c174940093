import type { Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import type { PlanNode } from '../plan/records/pipework.ts';
import { type Height, resolveHeight, riseBetween } from './heights.ts';
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

/** Height of a node, with what it leans on. */
function nodeHeight(plan: Plan, node: PlanNode): Height | undefined {
  if (node.place.on === 'storey') return resolveHeight(plan, node.place.height);
  const place = connectionPlace(plan, node.place.point, node.place.connection);
  return place && { z: place.at.z, lo: place.zLo, hi: place.zHi, doubts: place.doubts };
}

/** A length or rise in mm as drawn, and the bounds it lies between. */
export interface Measured {
  readonly mm: number;
  readonly lo: number;
  readonly hi: number;
}

/**
 * How far node `b` lies above node `a`. Two ends set from one uncertain height move together, so the rise between them
 * is exact however uncertain that height is. Undefined where one of them has no height.
 */
export function riseOf(plan: Plan, a: PlanNode, b: PlanNode): Measured | undefined {
  const [ha, hb] = [nodeHeight(plan, a), nodeHeight(plan, b)];
  return ha && hb && riseBetween(ha, hb);
}

/** Straight length between two nodes with its bounds; undefined where one of them has no place. */
export function lengthBetween(plan: Plan, a: PlanNode, b: PlanNode): Measured | undefined {
  const pa = nodePlace(plan, a);
  const pb = nodePlace(plan, b);
  const rise = riseOf(plan, a, b);
  if (!pa || !pb || !rise) return undefined;
  const mm = distance3(pa.at, pb.at);
  const flat = Math.hypot(pa.at.x - pb.at.x, pa.at.y - pb.at.y);
  const most = Math.max(Math.abs(rise.lo), Math.abs(rise.hi));
  const least = rise.lo <= 0 && rise.hi >= 0 ? 0 : Math.min(Math.abs(rise.lo), Math.abs(rise.hi));
  // A hair of rounding must not put the drawn length outside its own bounds.
  return { mm, lo: Math.min(mm, Math.hypot(flat, least)), hi: Math.max(mm, Math.hypot(flat, most)) };
}
