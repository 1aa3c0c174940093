import type { Plan } from '../../plan/plan.ts';
import type { Doomed } from './cascade.ts';

interface Pipe {
  readonly run: string;
  readonly a: string;
  readonly b: string;
}

/** Nodes and runs that the pipes which have just gone leave with no pipe at all, and the items on those nodes. */
export function looseEnds(plan: Plan, gone: readonly Pipe[]): Doomed[] {
  const held = new Set<string>();
  for (const pipe of [...Object.values(plan.legs), ...Object.values(plan.stretches)]) {
    held.add(pipe.a).add(pipe.b).add(pipe.run);
  }
  const empty: Doomed[] = [];
  const nodes = new Set(gone.flatMap((p) => [p.a, p.b]));
  for (const id of nodes) {
    if (held.has(id) || !plan.nodes[id]) continue;
    empty.push({ map: 'nodes', id });
    for (const item of Object.values(plan.items)) if (item.node === id) empty.push({ map: 'items', id: item.id });
  }
  for (const id of new Set(gone.map((p) => p.run))) {
    if (!held.has(id) && plan.runs[id]) empty.push({ map: 'runs', id });
  }
  return empty;
}
