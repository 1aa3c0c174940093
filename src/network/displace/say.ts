import type { Plan } from '../../plan/plan.ts';
import { saidPoint, saidService } from '../said.ts';

/** A run by its name, or by its service where it has none. */
export function sayRun(plan: Plan, id: string | undefined): string {
  const run = id === undefined ? undefined : plan.runs[id];
  if (!run) return 'The pipe';
  return run.name === '' ? `The ${saidService(run.service)} run` : `The run ${run.name}`;
}

export function sayPoint(plan: Plan, id: string): string {
  const point = plan.points[id];
  return point ? saidPoint(point) : 'a point';
}
