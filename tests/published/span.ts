import { figure } from '../../src/reference/figure.ts';

/** From, to and the best single figure of a cell, or what it is instead. */
export function span(table: string, row: string, column?: string): readonly (number | null)[] | string {
  const found = figure(table, row, column);
  return found.is === 'known' ? [found.lo, found.hi, found.value] : found.is;
}

export const same = (n: number): readonly number[] => [n, n, n];
