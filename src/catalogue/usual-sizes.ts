import { tables } from '../reference/tables.ts';

const STOCKED = 'gas-size-steps';

/** Sizes of a kind of tube that every van carries, smallest first, as the plan stores them; empty where no table says. */
export function usualSizes(tubeKind: string): readonly string[] {
  const row = tables()
    .find((t) => t.id === STOCKED)
    ?.rows.find((r) => r.key === tubeKind);
  return row ? row.cells.filter((c): c is string => typeof c === 'string') : [];
}
