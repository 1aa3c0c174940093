import { isDraft } from 'immer';
import { incidence } from '../../network/displace/incidence.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg, Stretch } from '../../plan/records/pipework.ts';

/** Legs that end at a node. A draft is read through, since it changes; of a plan the joints are known. */
export function legsAt(plan: Plan, node: string): readonly Leg[] {
  if (!isDraft(plan)) return incidence(plan).legsAt(node);
  return Object.values(plan.legs).filter((l) => l.a === node || l.b === node);
}

export function stretchesAt(plan: Plan, node: string): readonly Stretch[] {
  if (!isDraft(plan)) return incidence(plan).stretchesAt(node);
  return Object.values(plan.stretches).filter((s) => s.a === node || s.b === node);
}

/** Services that meet at a node: those of its pipes and that of its tail. */
export function servicesAt(plan: Plan, node: string): Set<string> {
  const found = new Set<string>();
  for (const pipe of [...legsAt(plan, node), ...stretchesAt(plan, node)]) {
    const service = plan.runs[pipe.run]?.service;
    if (service !== undefined) found.add(service);
  }
  const place = plan.nodes[node]?.place;
  if (place?.on === 'connection') {
    const tail = plan.points[place.point]?.connections.find((c) => c.id === place.connection);
    if (tail) found.add(tail.service);
  }
  return found;
}

/** The end of a leg that is not `node`. */
export const otherEnd = (leg: { a: string; b: string }, node: string): string => (leg.a === node ? leg.b : leg.a);
