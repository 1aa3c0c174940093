import { constant, figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import type { GasKind } from '../gas/heat-input.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';
import type { TightnessEdition } from './edition-by-date.ts';

const TABLE = 'gas-tightness-drop-3';

/** Least movement of a gauge that counts, mbar, by the kind of gauge. */
export function perceptible(): { readonly waterGauge: Quantity; readonly electronic: Quantity } {
  const of = (column: string): Quantity =>
    exact(constant('gas-tightness-movement', 'perceptible', column), 'mbar', 2, 'memory');
  return { waterGauge: of('waterGauge'), electronic: of('electronic') };
}

export interface DropAsk {
  readonly edition: TightnessEdition['id'];
  readonly gas: GasKind;
  /** Row of the table of meters; "none" where there is no meter; null where its size is not told. */
  readonly meter: string | null;
  /** Nominal size of the largest pipe, mm; null where one is not known. */
  readonly largestMm: number | null;
}

/** Drop allowed with appliances connected and no smell, mbar. No result where the figure stands in a document nobody read. */
export function allowedDrop({ edition, gas, meter, largestMm }: DropAsk): Working {
  const title = 'Drop allowed with appliances connected';
  if (edition === '4') return cannot(title, ['the band of the installation volume in edition 4']);
  if (gas !== 'natural') return cannot(title, ['the limit for propane in edition 3']);
  if (meter === null) return cannot(title, ['size of the meter']);
  if (largestMm === null) return cannot(title, ['size of every gas pipe']);
  const [most, larger] = [figure(TABLE, meter, 'pipeMostMm'), figure(TABLE, meter, 'largerMostMm')];
  if (most.is !== 'known' || larger.is !== 'known') return cannot(title, [`limit for a ${meter} meter`]);
  if (largestMm > larger.lo) return cannot(title, [`pipe over ${larger.lo}: another standard`]);
  const found = figure(TABLE, meter, largestMm <= most.lo ? 'mbar' : 'largerMbar');
  if (found.is !== 'known') return cannot(title, [`limit for a ${meter} meter`]);
  const size = largestMm <= most.lo ? `pipe to ${most.lo}` : `pipe over ${most.lo}, to ${larger.lo}`;
  const limit = quantityOf(found);
  return {
    title,
    steps: [
      step('Allowed drop, edition 3', `${meter === 'none' ? 'no' : meter} meter, ${size}`, limit, citesOf(found.cite)),
    ],
    result: limit,
    missing: [],
    assumed: [],
  };
}
