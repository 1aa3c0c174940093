import { figure, type Known } from '../../reference/figure.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { times } from '../gas/interval.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';

const TABLE = 'hot-wait';

function known(row: string, column: string): Known {
  const found = figure(TABLE, row, column);
  if (found.is !== 'known') throw new Error(`no ${row} in ${TABLE}`);
  return found;
}

/** What the wait is held against and made of; read once, because every tap asks. */
export const WAIT = {
  first: known('first reading', 'seconds'),
  other: known('other reading', 'seconds'),
  good: known('good', 'seconds'),
  poor: known('poor', 'seconds'),
  boilerStart: known('boiler start', 'seconds'),
  warming: known('tube warming', 'share'),
  tailFlow: known('tail', 'flow'),
};

export interface WaitAsk {
  /** Water between the source and the tap, litres. */
  readonly litres: Quantity;
  /** Flow of the tap, litres a minute. */
  readonly flow: Quantity;
  /** The source has to light first: a combi, not a cylinder. */
  readonly lights: boolean;
}

/** Seconds that the water standing in the pipe takes to leave the tap, and nothing else; null without a flow. */
export function plugTime(litres: Quantity, flow: Quantity): Quantity | null {
  if (!(flow.lo > 0)) return null;
  return {
    lo: flow.hi === null ? 0 : (litres.lo / flow.hi) * 60,
    hi: litres.hi === null ? null : (litres.hi / flow.lo) * 60,
    value: litres.value === null || flow.value === null ? null : (litres.value / flow.value) * 60,
    unit: 's',
    digits: 0,
    sureness: leastSure(litres.sureness, flow.sureness),
  };
}

/** Seconds to hot water: the plug, longer by the warming of the tube, and the start of a combi. Null without a flow. */
export function waitFor({ litres, flow, lights }: WaitAsk): Working {
  const title = 'Wait for hot water';
  const plug = plugTime(litres, flow);
  if (plug === null) return cannot(title, ['the flow of the tap']);
  const { warming, boilerStart } = WAIT;
  const longer = { lo: 1 + warming.lo, hi: warming.hi === null ? null : 1 + warming.hi, value: null };
  const warmed = times(plug, { ...longer, sureness: warming.sureness }, 's', 0);
  const start = lights ? quantityOf(boilerStart) : exact(0, 's', 0, 'page');
  const result: Quantity = {
    ...warmed,
    lo: warmed.lo + start.lo,
    hi: warmed.hi === null || start.hi === null ? null : warmed.hi + start.hi,
    sureness: leastSure(warmed.sureness, start.sureness),
  };
  return {
    title,
    steps: [
      step('Water in the pipe runs out', `${figures(litres, 2)} litres at ${figures(flow, 1)} litres a minute`, plug),
      step('The tube is warmed on the way', `longer by ${figures(quantityOf(warming))}`, warmed, citesOf(warming.cite)),
      ...(lights ? [step('The boiler lights', 'a combi has none in store', start, citesOf(boilerStart.cite))] : []),
      step('Until it is hot', 'added', result),
    ],
    result,
    missing: [],
    assumed: ['the tap is fully open, and the pipe has gone cold'],
  };
}

export type Ease = 'good' | 'borderline' | 'poor';

/** Good, borderline or poor, as it surely is; null where its doubt goes over a bound. */
export function easeOf(wait: Quantity): Ease | null {
  const of = (s: number): Ease => (s <= WAIT.good.lo ? 'good' : s <= WAIT.poor.lo ? 'borderline' : 'poor');
  const [lo, hi] = [of(wait.lo), wait.hi === null ? null : of(wait.hi)];
  return lo === hi || lo === 'poor' ? lo : null;
}
