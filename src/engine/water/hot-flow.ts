import { figure, type Known } from '../../reference/figure.ts';
import { leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { times } from '../gas/interval.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';

function known(row: string, column: string): Known {
  const found = figure('hot-water-heat', row, column);
  if (found.is !== 'known') throw new Error(`no ${row} of hot water`);
  return found;
}

/** Heat of a litre, and what is taken where nobody told; read once. */
export const HEAT = {
  litre: known('litre', 'kj'),
  cold: known('cold', 'degrees'),
  hot: known('hot', 'degrees'),
  sheetRise: known('sheet rise', 'kelvin'),
};

const SECONDS = 60;

/** How far the water is warmed, K; null where the hot may be no warmer than the cold. */
export function riseOf(cold: Quantity, hot: Quantity): Quantity | null {
  if (cold.hi === null || hot.hi === null || hot.lo <= cold.hi) return null;
  return {
    lo: hot.lo - cold.hi,
    hi: hot.hi - cold.lo,
    value: cold.value === null || hot.value === null ? null : hot.value - cold.value,
    unit: 'K',
    digits: 0,
    sureness: leastSure(cold.sureness, hot.sureness),
  };
}

const divided = (a: Quantity, b: Quantity, k: number): Pick<Quantity, 'lo' | 'hi' | 'value'> => ({
  lo: b.hi === null ? 0 : (k * a.lo) / b.hi,
  hi: a.hi === null ? null : (k * a.hi) / b.lo,
  value: a.value === null || b.value === null ? null : (k * a.value) / b.value,
});

/** Litres a minute that a heat output (kW) warms by a rise (K). Null without either. */
export function hotFlow(outputKw: Quantity, rise: Quantity): Working {
  const title = 'Hot water at a heat output';
  if (!(outputKw.lo >= 0) || !(rise.lo > 0)) return cannot(title, [rise.lo > 0 ? 'the heat output' : 'the rise']);
  const { litre } = HEAT;
  const result: Quantity = {
    ...divided(outputKw, rise, SECONDS / litre.lo),
    unit: 'litres/min',
    digits: 1,
    sureness: leastSure(outputKw.sureness, rise.sureness, litre.sureness),
  };
  const how = `60 x ${figures(outputKw)} kW / (${figures(quantityOf(litre))} x ${figures(rise)} K)`;
  return {
    title,
    steps: [step('Flow', how, result, citesOf(litre.cite))],
    result,
    missing: [],
    assumed: litre.note === null ? [] : [litre.note],
  };
}

/** Heat in kW that a flow (litres a minute) takes for a rise (K). */
export function heatFor(flow: Quantity, rise: Quantity): Quantity {
  const k = HEAT.litre.lo / SECONDS;
  return {
    lo: k * flow.lo * rise.lo,
    hi: flow.hi === null || rise.hi === null ? null : k * flow.hi * rise.hi,
    value: flow.value === null || rise.value === null ? null : k * flow.value * rise.value,
    unit: 'kW',
    digits: 1,
    sureness: leastSure(flow.sureness, rise.sureness, HEAT.litre.sureness),
  };
}

/** A flow that was told at one rise, at another: the heat is the same. */
export function atRise(flow: Quantity, toldAt: Quantity, rise: Quantity): Quantity {
  const heat = times(flow, toldAt, 'litres/min', 1);
  return { ...heat, ...divided(heat, rise, 1), sureness: leastSure(heat.sureness, rise.sureness) };
}
