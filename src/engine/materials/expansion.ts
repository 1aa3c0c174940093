import { figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';

const TABLE = 'thermal-expansion';

/** Materials whose growth has been read. */
export const expandingMaterials = (): string[] => table(TABLE).rows.map((r) => r.key);

export interface ExpansionAsk {
  readonly material: string;
  readonly lengthM: number;
  /** Degrees it gets warmer, below zero where it gets colder. */
  readonly riseK: number;
  /** A coefficient of one's own, mm/m K, as in a maker's sheet; null for that of the table. */
  readonly mmPerMK: number | null;
}

/** How much a pipe grows, mm; below zero where it shrinks. The ends are told in order, whichever way it goes. */
export function expansion({ material, lengthM, riseK, mmPerMK }: ExpansionAsk): Working {
  const title = 'Growth of a pipe by heat';
  if (!(lengthM >= 0) || !Number.isFinite(lengthM)) return cannot(title, ['a length']);
  if (!Number.isFinite(riseK)) return cannot(title, ['how much warmer it gets']);
  const found = figure(TABLE, material, 'mmPerMK');
  if (found.is !== 'known' || found.hi === null) return cannot(title, [`how much ${material} grows`]);
  const read = quantityOf(found);
  const cites = citesOf(found.cite);
  const name = table(TABLE).rows.find((r) => r.key === material)?.title ?? material;
  const range = step(`Growth of ${name}`, 'a metre, in a degree', read, cites);
  // A figure for another power of ten is a slip of print, and a short pipe would hide it.
  if (mmPerMK !== null && !(mmPerMK >= found.lo && mmPerMK <= found.hi)) {
    return cannot(title, [`a coefficient of ${name} within ${figures(read)} mm/m K, not ${mmPerMK}`], [range]);
  }
  const by: Quantity = mmPerMK === null ? read : exact(mmPerMK, 'mm/m K', read.digits, read.sureness);
  const grown = [by.lo, by.hi ?? by.lo].map((c) => c * lengthM * riseK).sort((a, b) => a - b);
  const result: Quantity = {
    lo: grown[0] ?? 0,
    hi: grown[1] ?? 0,
    value: by.value === null ? null : by.value * lengthM * riseK,
    unit: 'mm',
    digits: 1,
    sureness: by.sureness,
  };
  return {
    title,
    steps: [range, step('Growth', `${lengthM} m x ${riseK} K x ${figures(by)} mm/m K`, result)],
    result,
    missing: [],
    assumed: ['free to move'],
  };
}
