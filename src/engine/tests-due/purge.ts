import { figure } from '../../reference/figure.ts';
import { leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { inverted, times } from '../gas/interval.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';
import type { TightnessEdition } from './edition-by-date.ts';

/** Seconds in an hour: a change of unit. */
const S_PER_H = 3600;
const TABLE = 'gas-purge-3';

export interface PurgeAsk {
  readonly edition: TightnessEdition['id'];
  readonly meter: string | null;
  /** Nominal size of the largest pipe, mm; null where one is not known. */
  readonly largestMm: number | null;
  /** Installation volume, m3; null where it cannot be told. */
  readonly volumeM3: Quantity | null;
}

/** Gas to be passed at a purge, m3: one volume for a house meter with small pipe, else a multiple of the installation volume. */
export function purgeVolume({ edition, meter, largestMm, volumeM3 }: PurgeAsk): Working {
  const title = 'Purge volume';
  if (edition === '4') return cannot(title, ['the rule of edition 4, which is to be read there']);
  if (meter === null) return cannot(title, ['size of the meter']);
  const most = figure(TABLE, meter, 'pipeMostMm');
  const fixed = figure(TABLE, meter, 'volumeM3');
  const factor = figure(TABLE, meter, 'timesVolume');
  if (factor.is !== 'known') return cannot(title, [`purge of a ${meter} meter`]);
  if (most.is === 'known' && largestMm === null) return cannot(title, ['size of every gas pipe']);
  if (most.is === 'known' && fixed.is === 'known' && largestMm !== null && largestMm <= most.lo) {
    const volume = quantityOf(fixed);
    const one = step(title, `${meter} meter, pipe to ${most.lo}`, volume, citesOf(fixed.cite));
    return { title, steps: [one], result: volume, missing: [], assumed: [] };
  }
  if (volumeM3 === null) return cannot(title, ['installation volume']);
  const volume: Quantity = {
    ...times(volumeM3, factor, 'm3', 3),
    sureness: leastSure(volumeM3.sureness, factor.sureness),
  };
  const many = step(title, `${factor.lo} x ${figures(volumeM3, 4)} m3`, volume, citesOf(factor.cite));
  return { title, steps: [many], result: volume, missing: [], assumed: [] };
}

/** Seconds a burner must take its full rate for a volume to have passed: 3600 x volume / flow. Null where nothing flows. */
export function purgeSeconds(volumeM3: Quantity, flowM3PerH: Quantity): Quantity | null {
  if (flowM3PerH.lo <= 0) return null;
  return times(times(volumeM3, inverted(flowM3PerH), 's', 0), { lo: S_PER_H, hi: S_PER_H, value: S_PER_H }, 's', 0);
}

/** Above this volume, m3, purged gas is lit at an open burner as soon as possible. */
export const litAbove = () => figure('gas-purge-lit', 'lit');
