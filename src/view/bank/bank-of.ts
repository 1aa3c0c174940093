import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Group } from '../../plan/records/pipework.ts';

/** The bank that what is chosen belongs to, with the run of it and the leg that was meant. */
export interface InBank {
  readonly group: Group;
  readonly run: string;
  readonly leg: string | null;
}

function runOf(plan: Plan, { map, id }: Selected): string | undefined {
  if (map === 'runs') return id;
  if (map === 'legs') return plan.legs[id]?.run;
  if (map !== 'nodes') return undefined;
  return Object.values(plan.legs).find((l) => l.a === id || l.b === id)?.run;
}

export function bankOf(plan: Plan, of: Selected): InBank | null {
  const run = runOf(plan, of);
  const group = run === undefined ? undefined : Object.values(plan.groups).find((g) => g.members.includes(run));
  return group && run !== undefined ? { group, run, leg: of.map === 'legs' ? of.id : null } : null;
}
