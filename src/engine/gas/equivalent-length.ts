import { figure } from '../../reference/figure.ts';
import { type Editions, edition } from '../../reference/tables.ts';
import { tube } from '../../reference/tubes.ts';
import { leastSure, type Quantity } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import { anything, best } from './interval.ts';
import { citesOf, figures, quantityOf } from './said.ts';

export const FITTING_CLASSES = ['elbow90', 'bend90', 'elbow45', 'bend45', 'tee-run', 'tee-branch'] as const;
/** Turn of the path through a fitting. `tee-run`: straight on through a tee; `tee-branch`: turning at one. */
export type FittingClass = (typeof FITTING_CLASSES)[number];

/** How many of one class; a range where bends of an unseen stretch are only bounded. */
export interface FittingCount {
  readonly class: FittingClass;
  readonly count: number | { readonly lo: number; readonly hi: number | null };
}

export interface EquivalentLength {
  /** Metres of straight tube one fitting stands for; open above where nothing has been read. */
  readonly length: Quantity;
  readonly known: boolean;
  readonly say: string;
  readonly cite: Cite | null;
}

/** Length to add for one fitting, by the edition the plan has pinned. Unknown where that edition has no row or figure. */
export function equivalentLength(
  tubeKind: string,
  size: string | null,
  of: FittingClass,
  editions: Editions,
): EquivalentLength {
  const table = edition('gas-fittings', editions);
  const found = tube(tubeKind, size);
  const title = table?.columns.find((c) => c.key === of)?.title ?? of;
  const unknown = { length: anything('m', 2), known: false, say: title };
  if (!table || !found) return { ...unknown, cite: null };
  const read = figure(table, `${found.kind} ${found.size}`, of);
  if (read.is !== 'known') return { ...unknown, cite: read.cite };
  return { length: quantityOf(read), known: true, say: title, cite: read.cite };
}

export interface EffectiveLength {
  readonly length: Quantity;
  /** Nothing of the allowance is known from above: what it was. */
  readonly missing: readonly string[];
  /** "12.9 m + 3 elbow at 0.60". */
  readonly how: string;
  readonly cites: readonly Cite[];
}

const countOf = (c: FittingCount['count']): { readonly lo: number; readonly hi: number | null } =>
  typeof c === 'number' ? { lo: c, hi: c } : c;

/** Measured length and the allowance of every fitting on the path, m. */
export function effectiveLength(
  tubeKind: string,
  size: string | null,
  lengthM: Quantity,
  fittings: readonly FittingCount[],
  editions: Editions,
): EffectiveLength {
  let { lo, hi } = lengthM;
  let value = best(lengthM);
  let sureness = lengthM.sureness;
  const missing: string[] = [];
  const words = [`${figures(lengthM, 1)} m`];
  const cites: (Cite | null)[] = [];
  for (const fitting of fittings) {
    const count = countOf(fitting.count);
    if (count.hi === 0) continue;
    const { length, known, say, cite } = equivalentLength(tubeKind, size, fitting.class, editions);
    const middle = best(length);
    lo += count.lo * length.lo;
    hi = hi === null || count.hi === null || length.hi === null ? null : hi + count.hi * length.hi;
    value =
      value === null || middle === null || count.hi === null ? null : value + ((count.lo + count.hi) / 2) * middle;
    if (known) sureness = leastSure(sureness, length.sureness);
    else missing.push(`length to add for ${say}${size === null ? '' : ` of ${size}`}`);
    const many = count.lo === count.hi ? `${count.lo}` : `${count.lo} to ${count.hi ?? 'any number of'}`;
    words.push(known ? `${many} x ${say} at ${figures(length)}` : `${many} x ${say}, not known`);
    cites.push(cite);
  }
  return {
    length: { lo, hi, value, unit: 'm', digits: 1, sureness },
    missing,
    how: words.join(' + '),
    cites: citesOf(...cites),
  };
}
