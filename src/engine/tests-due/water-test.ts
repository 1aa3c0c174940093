import { figure } from '../../reference/figure.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { times } from '../gas/interval.ts';
import { cannot, citesOf, figures, step } from '../gas/said.ts';

/** Pressure of a water test, bar: a multiple of the highest working pressure; null where that is not told. */
export function waterTestPressure(workingBar: Quantity | null): Working {
  const title = 'Water test pressure';
  const factor = figure('water-test', 'metal', 'times');
  if (factor.is !== 'known') return cannot(title, [factor.is === 'unknown' ? factor.say : 'the rule']);
  if (workingBar === null) return cannot(title, ['highest pressure it works at']);
  const result = times(workingBar, factor, 'bar', 1);
  const how = `${factor.lo} x ${figures(workingBar, 1)} bar`;
  return { title, steps: [step(title, how, result, citesOf(factor.cite))], result, missing: [], assumed: [] };
}

/** Minutes metal pipe is held at it. */
export const metalMinutes = () => figure('water-test', 'metal', 'minutes');
