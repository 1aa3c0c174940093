import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import type { GasKind } from './heat-input.ts';
import { inverted, times } from './interval.ts';
import { cannot, citesOf, figures, quantityOf, step } from './said.ts';

/** MJ in a kWh: a change of unit. */
const MJ_PER_KWH = 3.6;

/**
 * Gas flow, m3/h, of a gross heat input in kW: kW x 3.6 / gross calorific value (MJ/m3).
 * The basis of the job may give its own calorific value; null takes the trade figure of the table.
 */
export function gasFlow(grossKw: Quantity, gas: GasKind, calorificMJPerM3: number | null): Working {
  const title = 'Gas flow';
  const own = calorificMJPerM3 !== null && calorificMJPerM3 > 0 ? exact(calorificMJPerM3, 'MJ/m3', 1, 'page') : null;
  const listed = figure('gas-calorific', gas, 'grossMJPerM3');
  if (!own && listed.is !== 'known') return cannot(title, [`calorific value of ${gas} gas`]);
  const cv = own ?? (listed.is === 'known' ? quantityOf(listed) : null);
  if (!cv) return cannot(title, [`calorific value of ${gas} gas`]);
  const flow = times(
    times(grossKw, inverted(cv), 'm3/h', 2),
    { lo: MJ_PER_KWH, hi: MJ_PER_KWH, value: MJ_PER_KWH },
    'm3/h',
    2,
  );
  const cites = own ? [] : citesOf(listed.cite);
  return {
    title,
    steps: [
      step('Calorific value', own ? 'as the basis of the job says' : 'trade figure, gross', cv, cites),
      step('Flow', `${figures(grossKw)} kW x 3.6 / ${figures(cv, 1)}`, flow, cites),
    ],
    result: flow,
    missing: [],
    assumed: [],
  };
}
