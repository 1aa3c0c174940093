import type { Plan } from '../../plan/plan.ts';

/** A run by its name, or by its service where it has none. */
export function sayRun(plan: Plan, id: string | undefined): string {
  const run = id === undefined ? undefined : plan.runs[id];
  if (!run) return 'The pipe';
  return run.name === '' ? `The ${run.service} run` : `The run ${run.name}`;
}

export function sayPoint(plan: Plan, id: string): string {
  const point = plan.points[id];
  return point?.name || point?.kind || 'a point';
}
