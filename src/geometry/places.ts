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

/** Where a node is, with what its height leans on. Undefined where it leans on something that is gone or has no height. */
function standing(plan: Plan, node: PlanNode): { readonly place: Place; readonly height: Height } | undefined {
  if (node.place.on === 'connection') {
    const found = connectionPlace(plan, node.place.point, node.place.connection);
    const storey = plan.points[node.place.point]?.storey;
    if (!found || storey === undefined) return undefined;
    const { at, zLo, zHi, doubts } = found;
    return { place: { at, zLo, zHi, storey }, height: { z: at.z, lo: zLo, hi: zHi, doubts } };
  }
  const { x, y, storey, height } = node.place;
  const h = resolveHeight(plan, height);
  return h && { place: { at: { x, y, z: h.z }, zLo: h.lo, zHi: h.hi, storey }, height: h };
}

/** Place of a node; undefined where it leans on something that is gone or has no height. */
export const nodePlace = (plan: Plan, node: PlanNode): Place | undefined => standing(plan, node)?.place;

/** A length or rise in mm as drawn, and the bounds it lies between. */
export interface Measured {
  readonly mm: number;
  readonly lo: number;
  readonly hi: number;
}

/**
 * Two nodes, and how far the second lies above the first. Two ends set from one uncertain height move together, so the
 * rise between them is exact however uncertain that height is. Undefined where one of them has no place.
 */
export function placesOf(
  plan: Plan,
  a: PlanNode,
  b: PlanNode,
): { readonly a: Place; readonly b: Place; readonly rise: Measured } | undefined {
  const [from, to] = [standing(plan, a), standing(plan, b)];
  return from && to && { a: from.place, b: to.place, rise: riseBetween(from.height, to.height) };
}

/** Straight length between two nodes with its bounds; undefined where one of them has no place. */
export function lengthBetween(plan: Plan, a: PlanNode, b: PlanNode): Measured | undefined {
  const [from, to] = [standing(plan, a), standing(plan, b)];
  if (!from || !to) return undefined;
  const [pa, pb] = [from.place, to.place];
  const rise = riseBetween(from.height, to.height);
  const mm = distance3(pa.at, pb.at);
  const flat = Math.hypot(pa.at.x - pb.at.x, pa.at.y - pb.at.y);
  const most = Math.max(Math.abs(rise.lo), Math.abs(rise.hi));
  const least = rise.lo <= 0 && rise.hi >= 0 ? 0 : Math.min(Math.abs(rise.lo), Math.abs(rise.hi));
  // A hair of rounding must not put the drawn length outside its own bounds.
  return { mm, lo: Math.min(mm, Math.hypot(flat, least)), hi: Math.max(mm, Math.hypot(flat, most)) };
}
