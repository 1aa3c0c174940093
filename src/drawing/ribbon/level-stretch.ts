import { nodePlace } from '../../geometry/places.ts';
import { incidence } from '../../network/displace/incidence.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';

/** A leg that rises no more than this for its length lies level, or falls: it has a height rather than a rise. */
const STEEPEST = 0.1;
const LEAST_MM = 0.5;

export interface LaidLeg {
  readonly leg: Leg;
  readonly a: Xyz;
  readonly b: Xyz;
}

/** A leg with its ends; null where one of them has no place. */
export function laidLeg(plan: Plan, id: string): LaidLeg | null {
  const leg = plan.legs[id];
  const [a, b] = leg ? [plan.nodes[leg.a], plan.nodes[leg.b]] : [];
  const [pa, pb] = [a && nodePlace(plan, a)?.at, b && nodePlace(plan, b)?.at];
  return leg && pa && pb ? { leg, a: pa, b: pb } : null;
}

export function isLevel({ a, b }: Pick<LaidLeg, 'a' | 'b'>): boolean {
  const flat = Math.hypot(a.x - b.x, a.y - b.y);
  return flat > LEAST_MM && Math.abs(a.z - b.z) <= flat * STEEPEST;
}

/** The level stretch of pipe a leg is part of, whatever runs it belongs to: all of it changes height together. */
export function levelStretch(plan: Plan, id: string): LaidLeg[] {
  const first = laidLeg(plan, id);
  if (!first || !isLevel(first)) return [];
  const at = incidence(plan);
  const found = new Map([[id, first]]);
  for (const { leg } of found.values()) {
    for (const node of [leg.a, leg.b]) {
      for (const next of at.legsAt(node)) {
        const laid = found.has(next.id) ? null : laidLeg(plan, next.id);
        if (laid && isLevel(laid)) found.set(next.id, laid);
      }
    }
  }
  return [...found.values()];
}
