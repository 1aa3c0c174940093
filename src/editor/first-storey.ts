import { buildNetwork } from '../network/graph.ts';
import type { Case, Plan } from '../plan/plan.ts';

/** The floor a plan opens on: where most of the new pipe is, half of each leg to either end; with none, the first told. */
export function firstStorey(plan: Plan, chosen: Case): string {
  const storeys = Object.keys(plan.storeys);
  if (storeys.length < 2) return storeys[0] ?? '';
  const { edges, vertices } = buildNetwork(plan, chosen);
  const mm = new Map(storeys.map((id) => [id, 0]));
  for (const edge of edges.values()) {
    if (edge.state !== 'new') continue;
    for (const end of [edge.a, edge.b]) {
      const storey = vertices.get(end)?.place?.storey;
      const there = storey === undefined ? undefined : mm.get(storey);
      if (storey !== undefined && there !== undefined) mm.set(storey, there + (edge.lengthMm.value ?? 0) / 2);
    }
  }
  return [...mm].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
}
