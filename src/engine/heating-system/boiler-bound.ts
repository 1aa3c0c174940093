import type { Trace } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import { applianceLoad } from '../gas-system/appliance-load.ts';
import type { Given } from '../given.ts';
import { sayPoint } from '../say-names.ts';

/** What a boiler gives to its heating: its output, else no more than the heat that goes into it. Null where neither is told. */
export function boilerOutput(given: Given, point: Point): Quantity | null {
  const told = point.fields.outputKw;
  if (typeof told === 'number' && told > 0) return exact(told, 'kW', 1, 'page');
  const heating = point.fields.inputKwHeating;
  const asked = heating == null ? point : { ...point, fields: { ...point.fields, inputKwHotWater: null } };
  const most = applianceLoad(asked, sayPoint(given.plan, point.id), given.plan.basis.gas).working.result;
  return most?.hi == null ? null : between(0, most.hi, 'kW', 1, most.sureness);
}

/** Most that any one boiler of the plan gives; null where one of them tells nothing. */
export function boilerBound(given: Given, flow: Trace | undefined): Quantity | null {
  const boilers = (flow?.sources ?? []).flatMap((s) => {
    const point = given.plan.points[s.point];
    return point?.kind === 'boiler' ? [point] : [];
  });
  const outputs = boilers.map((b) => boilerOutput(given, b));
  if (outputs.length === 0 || outputs.some((o) => o === null)) return null;
  return outputs.reduce((most, o) => ((o?.hi ?? 0) > (most?.hi ?? 0) ? o : most));
}
