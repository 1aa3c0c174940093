import { figure } from '../../reference/figure.ts';
import { leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { greater, times } from './interval.ts';
import { cannot, citesOf, figures, step } from './said.ts';

export type GasKind = 'natural' | 'propane';

export interface HeatInputAsk {
  readonly name: string;
  readonly gas: GasKind;
  /** kW of heat input, as the data plate states them. Null where the appliance has none or nobody read it. */
  readonly heating: Quantity | null;
  readonly hotWater: Quantity | null;
  /** What the plate's figures are. Null: not told, so the load may be either. */
  readonly stated: 'gross' | 'net' | 'output' | null;
  /** The larger of the two unless the user has said which. */
  readonly use: 'larger' | 'heating' | 'hotWater';
  /** kW the heating is turned down to. It is shown and does not shrink the load. */
  readonly rangeRated: Quantity | null;
}

/**
 * Gross heat input of one appliance, kW: the load its pipe is sized for.
 * An output is no load (the efficiency is not known here), so it gives no result. A range rating changes nothing:
 * it can be turned up again, and hot water is outside it.
 */
export function heatInput(ask: HeatInputAsk): Working {
  const title = `Load of ${ask.name}`;
  if (ask.stated === 'output') return cannot(title, [`heat input of ${ask.name}: an output is no load`]);
  const steps: WorkingStep[] = [];
  const assumed: string[] = [];
  const { heating, hotWater } = ask;
  if (heating) steps.push(step('Heating input', '', heating));
  if (hotWater) steps.push(step('Hot-water input', '', hotWater));
  let taken = ask.use === 'hotWater' ? hotWater : heating;
  if (ask.use === 'larger') taken = heating && hotWater ? greater(heating, hotWater) : (heating ?? hotWater);
  if (!taken) return cannot(title, [`heat input of ${ask.name}`], steps);
  if (heating && hotWater && ask.use === 'larger') steps.push(step('The larger of the two', '', taken));
  if (ask.rangeRated)
    steps.push(
      step('Range rating', `turned down to ${figures(ask.rangeRated)} kW: it does not shrink the load`, taken),
    );
  if (ask.stated === 'gross') return { title, steps, result: taken, missing: [], assumed };

  const ratio = figure('gas-calorific', ask.gas, 'grossPerNet');
  if (ratio.is !== 'known') return cannot(title, [`gross over net of ${ask.gas} gas`], steps);
  const gross = times(taken, ratio, 'kW', taken.digits);
  if (ask.stated === 'net') {
    steps.push(step('Net to gross', `x ${ratio.lo}`, gross, citesOf(ratio.cite)));
    return { title, steps, result: gross, missing: [], assumed };
  }
  const either: Quantity = { ...gross, lo: taken.lo, value: null, sureness: leastSure(taken.sureness, gross.sureness) };
  steps.push(step('Gross or net not told', `as gross, or x ${ratio.lo} as net`, either, citesOf(ratio.cite)));
  assumed.push(`${ask.name}: not told whether its input is gross or net, so it may be either`);
  return { title, steps, result: either, missing: [], assumed };
}
