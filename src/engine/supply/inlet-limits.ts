import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { type Figure, figure } from '../../reference/figure.ts';
import { limitFor } from '../limits.ts';
import { usualReducer } from './expansion.ts';
import { bar } from './reducers.ts';

/** Names under which a figure of the sheet is kept beside the plan. */
export const INLET_LIMITS = { bar: 'inlet-pressure', c: 'inlet-temperature' } as const;

/**
 * No figure holds for all of them, so the general one only lends its unit: without a figure of the appliance's own, kept
 * beside the plan or set on the point, nothing is known.
 */
function ownLimit(plan: Plan, limit: string, point: Point, field: string, unitOf: Figure): number | null {
  const found = limitFor(plan, limit, point.id, unitOf);
  return found?.overridden ? found.figure.lo : bar(point.fields[field]);
}

/** Highest pressure a vessel's cold inlet takes, bar; null where nobody read its sheet. */
export const inletMaxBar = (plan: Plan, vessel: Point): number | null =>
  ownLimit(plan, INLET_LIMITS.bar, vessel, 'inletMaxBar', usualReducer());

/** Warmest water a heater's inlet takes, degrees; null where nobody read its sheet. */
export const inletMaxC = (plan: Plan, heater: Point): number | null =>
  ownLimit(plan, INLET_LIMITS.c, heater, 'inletMaxC', figure('preheat-temperatures', 'inlet, ordinary'));
