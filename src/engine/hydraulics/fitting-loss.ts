import type { AllowanceClass } from '../../network/allowances.ts';
import { constant, figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';

export type FittingBasis = 'heating' | 'water';

/** Which published table goes with which water. */
export const FITTING_TABLES = { heating: 'fitting-length-heating', water: 'fitting-length-water' } as const;

function read(basis: FittingBasis, key: string, boreMm: number): Quantity | null {
  const from = table(FITTING_TABLES[basis]);
  if (!from.columns.some((c) => c.key === key) || !(boreMm > 0)) return null;
  const found = figure(from, boreMm, key);
  if (found.is === 'known') return quantityOf(found);
  if (found.is === 'unknown' || found.from === null || found.to === null) return null;
  // Length to add grows with the bore: below the table it is at most the first figure, above it at least the last.
  const end = figure(from, boreMm < found.from ? found.from : found.to, key);
  if (end.is !== 'known') return null;
  const q = quantityOf(end);
  return boreMm < found.from ? { ...q, lo: 0, value: null } : { ...q, hi: null, value: null };
}

const lengths = new Map<string, Quantity | null>();

/**
 * Metres of tube that lose as much as the fitting or the item in line (its catalogue id), at the bore in mm. Between the
 * bores of the table straight; outside only a bound, without a best figure. Null where the table has nothing: what
 * a filter, a zone valve or a vessel loses is on its own sheet.
 */
export function fittingMetres(
  basis: FittingBasis,
  cls: AllowanceClass | (string & {}),
  boreMm: number,
): Quantity | null {
  const key = `${basis}|${cls}|${boreMm}`;
  const known = lengths.get(key);
  if (known !== undefined) return known;
  const q = read(basis, cls, boreMm);
  lengths.set(key, q);
  return q;
}

/** Loss in velocity heads, with its spread; null where no page was read. Source: table fitting-heads. */
export function fittingHeads(key: string): Quantity | null {
  const found = figure('fitting-heads', key);
  return found.is === 'known' ? quantityOf(found) : null;
}

const KV = { density: constant('hydraulic-constants', 'kvDensity'), pa: constant('hydraulic-constants', 'kvPa') };

/** Pa lost at a flow (m3/h) in what has a flow factor Kv (m3/h at 1 bar), for water of that density. */
export function kvLossPa(flowM3PerH: number, kv: number, densityKgM3: number): number {
  return KV.pa * (densityKgM3 / KV.density) * (flowM3PerH / kv) ** 2;
}
