import { constant, figure } from '../../reference/figure.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import type { GasKind } from '../gas/heat-input.ts';
import { inverted, times } from '../gas/interval.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';

/** Changes of unit: seconds in an hour, MJ in a kWh, cubic metres in a cubic foot (0.3048 m cubed). */
const S_PER_H = 3600;
const MJ_PER_KWH = 3.6;
export const M3_PER_FT3 = 0.3048 ** 3;

/** What a meter passed in a time. `dial` tells the unit of `volume`. */
export interface Timed {
  readonly volume: number;
  readonly dial: 'm3' | 'ft3';
  readonly seconds: number;
}

export interface RateAsk {
  readonly gas: GasKind;
  /** Gross calorific value of the basis, MJ/m3; null takes the trade figure. */
  readonly calorificMJPerM3: number | null;
}

export interface HeatInputs {
  readonly gross: Quantity;
  readonly net: Quantity | null;
}

/** m3/h of a timed meter. Null where no time or no gas passed. */
export function timedRate({ volume, dial, seconds }: Timed): Quantity | null {
  if (!(volume > 0) || !(seconds > 0)) return null;
  return exact((S_PER_H * volume * (dial === 'ft3' ? M3_PER_FT3 : 1)) / seconds, 'm3/h', 2, 'page');
}

function calorific({ gas, calorificMJPerM3 }: RateAsk) {
  if (calorificMJPerM3 !== null && calorificMJPerM3 > 0)
    return { value: exact(calorificMJPerM3, 'MJ/m3', 1, 'page'), cites: [], own: true };
  const listed = figure('gas-calorific', gas, 'grossMJPerM3');
  return listed.is === 'known' ? { value: quantityOf(listed), cites: citesOf(listed.cite), own: false } : null;
}

/** Heat input, kW gross, of a gas rate, with the net figure as a last step: m3/h x MJ/m3 / 3.6. */
export function rateInKw(rate: Quantity, ask: RateAsk): Working & { readonly inputs: HeatInputs | null } {
  const title = 'Heat input by the gas rate';
  const cv = calorific(ask);
  if (!cv) return { ...cannot(title, [`calorific value of ${ask.gas} gas`]), inputs: null };
  const by = 1 / MJ_PER_KWH;
  const gross = times(times(rate, cv.value, 'kW', 1), { lo: by, hi: by, value: by }, 'kW', 1);
  const ratio = figure('gas-calorific', ask.gas, 'grossPerNet');
  const net =
    ratio.is === 'known'
      ? { ...times(gross, inverted(quantityOf(ratio)), 'kW', 1), sureness: leastSure(gross.sureness, ratio.sureness) }
      : null;
  const steps = [
    step('Calorific value', cv.own ? 'as the basis of the job says' : 'trade figure, gross', cv.value, cv.cites),
    step('Net', ratio.is === 'known' ? `gross / ${ratio.lo}` : 'not known', net, citesOf(ratio.cite)),
    step('Gross', `${figures(rate)} m3/h x ${figures(cv.value, 1)} / 3.6`, gross, cv.cites),
  ];
  return { title, steps, result: gross, missing: [], assumed: [], inputs: { gross, net } };
}

/** What the meter does at a rate: seconds for its imperial dial, and m3 in the time a metric one is read over. */
export function onTheMeter(rate: Quantity): { readonly dialSeconds: Quantity; readonly passedM3: Quantity } | null {
  if (rate.lo <= 0) return null;
  const feet = constant('gas-rate-dials', 'imperial', 'feet3');
  const seconds = constant('gas-rate-dials', 'metric', 'seconds');
  const dial = S_PER_H * feet * M3_PER_FT3;
  const share = seconds / S_PER_H;
  return {
    dialSeconds: { ...times(exact(dial, 's', 0), inverted(rate), 's', 0), sureness: rate.sureness },
    passedM3: times(rate, { lo: share, hi: share, value: share }, 'm3', 3),
  };
}

/** Seconds that a metric meter is read over. */
export const readOverSeconds = (): number => constant('gas-rate-dials', 'metric', 'seconds');
