/** How sure a figure is, best first. `memory` is shown as "unverified" wherever the figure is used. */
export type Sureness = 'page' | 'quotation' | 'derived' | 'practice' | 'memory';

const ORDER: readonly Sureness[] = ['page', 'quotation', 'derived', 'practice', 'memory'];

/** A sum is only as sure as the least sure figure in it. */
export function leastSure(...of: readonly Sureness[]): Sureness {
  return of.reduce((worst, s) => (ORDER.indexOf(s) > ORDER.indexOf(worst) ? s : worst), 'page' as Sureness);
}

/**
 * A figure with its doubt: it lies between `lo` and `hi`, in `unit`. `hi` is null where nothing bounds it from above
 * (an unknown part widens the low side only). `value` is the best single figure, where there is one.
 */
export interface Quantity {
  readonly lo: number;
  readonly hi: number | null;
  readonly value: number | null;
  readonly unit: string;
  readonly digits: number;
  readonly sureness: Sureness;
}

export function exact(value: number, unit: string, digits: number, sureness: Sureness = 'derived'): Quantity {
  return { lo: value, hi: value, value, unit, digits, sureness };
}

export function between(
  lo: number,
  hi: number | null,
  unit: string,
  digits: number,
  sureness: Sureness = 'derived',
  value: number | null = null,
): Quantity {
  if (hi !== null && lo > hi) throw new RangeError(`lowest ${lo} is above highest ${hi} ${unit}`);
  return { lo, hi, value, unit, digits, sureness };
}

/** Sum of figures of one unit. An empty list has no unit, so it throws. Not known from above if any part is not. */
export function addQuantities(parts: readonly Quantity[]): Quantity {
  const [first, ...rest] = parts;
  if (!first) throw new RangeError('nothing to add');
  return rest.reduce((sum, q) => {
    if (q.unit !== sum.unit) throw new RangeError(`cannot add ${q.unit} to ${sum.unit}`);
    return {
      lo: sum.lo + q.lo,
      hi: sum.hi === null || q.hi === null ? null : sum.hi + q.hi,
      value: sum.value === null || q.value === null ? null : sum.value + q.value,
      unit: sum.unit,
      digits: Math.max(sum.digits, q.digits),
      sureness: leastSure(sum.sureness, q.sureness),
    };
  }, first);
}

/** "0.50 to 0.75", "at least 0.31", "1.20": figures only, rounded to the digits, the unit left to the caller. */
export function sayFigures(q: Quantity): string {
  const lo = q.lo.toFixed(q.digits);
  if (q.hi === null) return `at least ${lo}`;
  const hi = q.hi.toFixed(q.digits);
  return lo === hi ? lo : `${lo} to ${hi}`;
}

export function sayQuantity(q: Quantity): string {
  return q.unit === '' ? sayFigures(q) : `${sayFigures(q)} ${q.unit}`;
}

/** Rounded at the report door, so that two machines print the same bytes. */
export function roundQuantity(q: Quantity): Quantity {
  // Whole figures, and ends that are one figure, are most of them, and writing a figure out is what takes the time.
  const round = (n: number): number => (Number.isInteger(n) ? n : Number(n.toFixed(q.digits + 1))) + 0;
  const lo = round(q.lo);
  const other = (n: number | null): number | null => (n === null ? null : n === q.lo ? lo : round(n));
  return { ...q, lo, hi: other(q.hi), value: other(q.value) };
}

export type Verdict = 'pass' | 'check' | 'stop';

/** Against an upper limit: limit above the whole interval passes, below it stops, inside it asks for a check. */
export function againstMost(q: Quantity, limit: number): Verdict | 'cantTell' {
  if (q.lo > limit) return 'stop';
  if (q.hi === null) return 'cantTell';
  return q.hi <= limit ? 'pass' : 'check';
}

/** Against a lower limit, the same the other way round. */
export function againstLeast(q: Quantity, limit: number): Verdict | 'cantTell' {
  if (q.hi !== null && q.hi < limit) return 'stop';
  if (q.hi === null && q.lo < limit) return 'cantTell';
  return q.lo >= limit ? 'pass' : 'check';
}
