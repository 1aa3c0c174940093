import type { Known, TableCite } from '../../reference/figure.ts';
import { type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Cite, Working, WorkingStep } from '../../report/working.ts';

/** A figure out of a table as a quantity, without the cite it carries. */
export function quantityOf(f: Known, digits = f.digits): Quantity {
  return { lo: f.lo, hi: f.hi, value: f.value, unit: f.unit, digits, sureness: f.sureness };
}

export const step = (
  label: string,
  how: string,
  result: Quantity | null,
  cites: readonly Cite[] = [],
): WorkingStep => ({
  label,
  how,
  result,
  cites,
});

/** Cites of a list of steps, each named once, in the order met. */
export function citesOf(...found: readonly (TableCite | Cite | null | undefined)[]): Cite[] {
  const once = new Map<string, Cite>();
  for (const c of found) if (c) once.set(`${c.source}|${c.clause}|${c.table ?? ''}`, c);
  return [...once.values()];
}

/** A sum that could not be done: what was missing, and the steps as far as they got. */
export const cannot = (title: string, missing: readonly string[], steps: readonly WorkingStep[] = []): Working => ({
  title,
  steps,
  result: null,
  missing,
  assumed: [],
});

/** Figures of a working, to the digits asked for: "12.9", "8.9 to 10.2", "at least 8.9". */
export const figures = (q: Quantity, digits = q.digits): string => sayFigures({ ...q, digits });
