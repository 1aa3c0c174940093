import type { Table } from '../../reference/schema/table-schema.ts';
import { table } from '../../reference/tables.ts';

export interface TightnessEdition {
  readonly id: '3' | '4';
  readonly table: Table;
  /** First and last day it may be worked to, "2026-03" where only the month is known. Null: no such end. */
  readonly from: string | null;
  readonly to: string | null;
}

const one = (id: '3' | '4'): TightnessEdition => {
  const found = table(`gas-tightness-${id}`);
  return { id, table: found, from: found.inForce?.from ?? null, to: found.inForce?.to ?? null };
};

/** Editions of the standard for tightness tests, oldest first. */
export const tightnessEditions = (): readonly TightnessEdition[] => [one('3'), one('4')];

/** Editions that may be worked to on a day, "2026-08-12". Several where they overlap; all where the day is not told. */
export function editionsOn(day: string | null): readonly TightnessEdition[] {
  const all = tightnessEditions();
  if (day === null) return all;
  return all.filter((e) => (e.from === null || day >= e.from) && (e.to === null || day <= e.to));
}

/** Editions a test after this day may still go by: the survey comes before the work. */
export const editionsFrom = (day: string | null): readonly TightnessEdition[] =>
  tightnessEditions().filter((e) => day === null || e.to === null || day <= e.to);
