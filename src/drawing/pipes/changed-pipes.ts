import type { Plan } from '../../plan/plan.ts';
import type { Leg, Stretch } from '../../plan/records/pipework.ts';

export type Pipe = Leg | Stretch;

export const pipeOf = (plan: Plan, id: string): Pipe | undefined => plan.legs[id] ?? plan.stretches[id];

type MapName = 'legs' | 'stretches' | 'nodes' | 'runs' | 'items' | 'points';

/** Ids of records of a map that are not the same in two plans. Nothing is looked at where the maps are one object. */
export function changedIn(before: Plan, after: Plan, map: MapName): string[] {
  const [was, is] = [before[map], after[map]];
  if (was === is) return [];
  const ids: string[] = [];
  for (const id in is) if (was[id] !== is[id]) ids.push(id);
  for (const id in was) if (!(id in is)) ids.push(id);
  return ids;
}

/** Pipes by the nodes they end at, of a whole plan, kept as the plan changes. */
export class PipesAtNodes {
  readonly #at = new Map<string, Set<string>>();

  add({ id, a, b }: Pipe): void {
    for (const node of [a, b]) {
      const there = this.#at.get(node);
      if (there) there.add(id);
      else this.#at.set(node, new Set([id]));
    }
  }

  remove({ id, a, b }: Pipe): void {
    for (const node of [a, b]) this.#at.get(node)?.delete(id);
  }

  at(node: string): Iterable<string> {
    return this.#at.get(node) ?? [];
  }
}

/** Order in which pipes are drawn: what nobody has seen first, so that it never covers what was; then as in the plan. */
export function ranksOf(plan: Plan): ReadonlyMap<string, number> {
  const ranks = new Map<string, number>();
  for (const id in plan.stretches) ranks.set(id, ranks.size);
  for (const id in plan.legs) ranks.set(id, ranks.size);
  return ranks;
}
