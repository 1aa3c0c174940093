import { services } from '../../catalogue/services.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg, Stretch } from '../../plan/records/pipework.ts';
import { vertexOf } from '../pipes/drawn-leg.ts';

/** What of the house is drawn: one run, all that hangs on it and carries the same, or everything. */
export type IsoScope =
  | { readonly of: 'run'; readonly run: string }
  | { readonly of: 'system'; readonly run: string }
  | { readonly of: 'all' };

export type Pipe =
  | { readonly map: 'legs'; readonly record: Leg }
  | { readonly map: 'stretches'; readonly record: Stretch };

export const scopeKey = (scope: IsoScope): string => (scope.of === 'all' ? 'all' : `${scope.of}:${scope.run}`);

function standing(plan: Plan, alive: Alive): Pipe[] {
  const found: Pipe[] = [];
  for (const record of Object.values(plan.stretches)) {
    if (alive.has('stretches', record.id)) found.push({ map: 'stretches', record });
  }
  for (const record of Object.values(plan.legs)) if (alive.has('legs', record.id)) found.push({ map: 'legs', record });
  return found;
}

/** Gas, heating, cold, hot…; a service that the catalogue does not know is a system of its own. */
function systemOf(plan: Plan, run: string): string {
  const service = plan.runs[run]?.service ?? '';
  return services.get(service)?.system ?? service;
}

/** Places at which a pipe hangs on others: where it ends, and the whole thing that it ends at. */
function* hangsOn(plan: Plan, pipe: Pipe): Generator<string> {
  for (const id of [pipe.record.a, pipe.record.b]) {
    const node = plan.nodes[id];
    if (!node) continue;
    yield vertexOf(node);
    if (node.place.on === 'connection') yield `of ${node.place.point}`;
  }
}

function systemFrom(plan: Plan, pipes: readonly Pipe[], run: string): Pipe[] {
  const system = systemOf(plan, run);
  const same = pipes.filter((p) => systemOf(plan, p.record.run) === system);
  const at = new Map<string, Pipe[]>();
  for (const pipe of same) {
    for (const place of hangsOn(plan, pipe)) {
      const there = at.get(place);
      if (there) there.push(pipe);
      else at.set(place, [pipe]);
    }
  }
  const found = new Set(same.filter((p) => p.record.run === run));
  for (const pipe of found)
    for (const place of hangsOn(plan, pipe)) for (const next of at.get(place) ?? []) found.add(next);
  return same.filter((p) => found.has(p));
}

/** Pipes of a scope that stand in a case, unseen ones first, in the order of the plan. */
export function pipesOf(plan: Plan, alive: Alive, scope: IsoScope): Pipe[] {
  const all = standing(plan, alive);
  if (scope.of === 'all') return all;
  return scope.of === 'run' ? all.filter((p) => p.record.run === scope.run) : systemFrom(plan, all, scope.run);
}
