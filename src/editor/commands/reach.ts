import * as v from 'valibot';
import { buildNetwork } from '../../network/graph.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Case, Plan } from '../../plan/plan.ts';

/** This leg only, from here to the end of the run, or the whole run. */
export const reach = v.picklist(['leg', 'onward', 'run']);
export type Reach = v.InferOutput<typeof reach>;

/** Legs that a change reaches, in the order they are told. A leg off the told way counts as the whole run from there. */
export function legsReached(plan: Plan, chosen: Case, leg: string, how: Reach): string[] {
  const record = plan.legs[leg];
  if (!record) return [];
  if (how === 'leg') return [leg];
  const all = Object.values(plan.legs).filter((l) => l.run === record.run);
  if (how === 'run') return all.map((l) => l.id);
  const told = orderedLegs(buildNetwork(plan, chosen), record.run).steps.map((s) => s.edge);
  const here = told.indexOf(leg);
  return here < 0 ? [leg] : told.slice(here).filter((id) => plan.legs[id]);
}
