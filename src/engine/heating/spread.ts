import { leastSure, type Quantity, type Sureness } from '../../report/quantity.ts';

/** The interval of a figure that rises with everything it is made of: worked out at the lows, the bests and the highs. */
export function rising(
  of: readonly Quantity[],
  unit: string,
  digits: number,
  work: (...at: number[]) => number,
): Quantity {
  const highs = of.map((q) => q.hi);
  const values = of.map((q) => q.value);
  const known = <T>(all: readonly (T | null)[]): all is T[] => all.every((n) => n !== null);
  return {
    lo: work(...of.map((q) => q.lo)),
    hi: known(highs) ? work(...highs) : null,
    value: known(values) ? work(...values) : null,
    unit,
    digits,
    sureness: of.reduce<Sureness>((worst, q) => leastSure(worst, q.sureness), 'page'),
  };
}

export const scaled = (q: Quantity, by: number, unit = q.unit, digits = q.digits): Quantity =>
  rising([q], unit, digits, (n) => n * by);

/** Sum of figures, or nothing of that unit. */
export const total = (of: readonly Quantity[], unit: string, digits: number): Quantity =>
  of.length === 0
    ? { lo: 0, hi: 0, value: 0, unit, digits, sureness: 'page' }
    : rising(of, unit, digits, (...at) => at.reduce((sum, n) => sum + n, 0));

/** Best single figure: its own, the middle of a bounded one, else the low end. */
export const middle = (q: Quantity): number => q.value ?? (q.hi === null ? q.lo : (q.lo + q.hi) / 2);
