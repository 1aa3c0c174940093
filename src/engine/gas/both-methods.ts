import type { Quantity } from '../../report/quantity.ts';
import type { TableDrop } from './table-drop.ts';

/** The sum of the physics, held to what the table allows at the same place. */
export function bestOf(physical: Quantity | null, table: TableDrop | undefined): number | null {
  const own = physical?.value ?? null;
  if (own === null) return table?.value ?? null;
  if (!table?.within) return own;
  return Math.min(Math.max(own, table.within.lo), table.within.hi ?? own);
}

/**
 * Union of both methods. Where the table only says "at most" it bounds from above and lowers nothing; where it has no
 * figure the physics stands alone.
 */
export function bothMethods(
  physical: Quantity | null,
  table: TableDrop | undefined,
  value: number | null,
): { lo: number; hi: number | null } | null {
  if (!physical && !table) return null;
  if (!physical) return table ? { lo: table.least, hi: table.most } : null;
  if (!table) return { lo: physical.lo, hi: physical.hi };
  const tableLow = table.lowerIsBound ? (table.most ?? physical.lo) : table.least;
  const lo = Math.min(physical.lo, tableLow, value ?? Number.POSITIVE_INFINITY);
  const hi = physical.hi === null ? null : Math.max(physical.hi, table.most ?? 0, value ?? 0);
  return { lo, hi };
}
