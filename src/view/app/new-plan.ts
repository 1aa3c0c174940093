import { assumptions } from '../../catalogue/assumptions.ts';
import { emptyPlan } from '../../plan/empty-plan.ts';
import type { Plan } from '../../plan/plan.ts';
import { deviceIds } from './ids.ts';

/** A fresh page with one assumed floor: a run can be told on it before any wall is drawn. */
export function newPlan(name: string): Plan {
  const { ceilingMm, buildUpMm } = assumptions();
  return emptyPlan({
    id: deviceIds.next('plan'),
    name,
    storey: deviceIds.next('s'),
    option: deviceIds.next('o'),
    ceilingMm,
    buildUpMm,
  });
}
