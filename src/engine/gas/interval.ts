import { leastSure, type Quantity, type Sureness } from '../../report/quantity.ts';

/** Best single figure of a quantity: its own, or the middle where it is bounded both ways. Null where it is not. */
export function best(q: Quantity): number | null {
  if (q.value !== null) return q.value;
  return q.hi === null ? null : (q.lo + q.hi) / 2;
}

/** What nothing is known of but that it is not negative. */
export const anything = (unit: string, digits: number, sureness: Sureness = 'derived'): Quantity => ({
  lo: 0,
  hi: null,
  value: null,
  unit,
  digits,
  sureness,
});

type NotNegative = Pick<Quantity, 'lo' | 'hi' | 'value'>;

/** Product of two figures that are not negative; open above if either is. */
export function times(
  q: Quantity,
  by: NotNegative & Partial<Pick<Quantity, 'sureness'>>,
  unit: string,
  digits: number,
): Quantity {
  return {
    lo: q.lo * by.lo,
    hi: q.hi === null || by.hi === null ? null : q.hi * by.hi,
    value: q.value === null || by.value === null ? null : q.value * by.value,
    unit,
    digits,
    sureness: leastSure(q.sureness, by.sureness ?? 'page'),
  };
}

/** One over a figure that is above nothing. */
export function inverted(q: Quantity): NotNegative & Pick<Quantity, 'sureness'> {
  if (q.lo <= 0) throw new RangeError('only a figure above nothing can be divided by');
  return {
    lo: q.hi === null ? 0 : 1 / q.hi,
    hi: 1 / q.lo,
    value: q.value === null ? null : 1 / q.value,
    sureness: q.sureness,
  };
}

/** The smallest interval that holds both. */
export function union(a: Quantity, b: Quantity, value: number | null): Quantity {
  return {
    lo: Math.min(a.lo, b.lo),
    hi: a.hi === null || b.hi === null ? null : Math.max(a.hi, b.hi),
    value,
    unit: a.unit,
    digits: Math.max(a.digits, b.digits),
    sureness: leastSure(a.sureness, b.sureness),
  };
}

/** The greater of two figures of one thing, each with its doubt. */
export function greater(a: Quantity, b: Quantity): Quantity {
  return {
    lo: Math.max(a.lo, b.lo),
    hi: a.hi === null || b.hi === null ? null : Math.max(a.hi, b.hi),
    value: a.value === null || b.value === null ? null : Math.max(a.value, b.value),
    unit: a.unit,
    digits: Math.max(a.digits, b.digits),
    sureness: leastSure(a.sureness, b.sureness),
  };
}
