import type { Joining } from '../plan/records/pipework.ts';
import { figure } from '../reference/figure.ts';
import { tables } from '../reference/tables.ts';

export interface TubeSpec {
  readonly id: string;
  readonly label: string;
  /** Table of dimensions; null, or a table that is not here: no size is known. */
  readonly sizesFromTable: string | null;
  /** Which rows of the table are this kind; left out: all. */
  readonly rows?: readonly string[];
  /** Ways it is joined, the usual one first. */
  readonly joinings: readonly Joining[];
  readonly services: readonly string[];
  /** No longer laid: offered for pipe that was surveyed, never for new pipe. */
  readonly onlyExisting?: boolean;
  /** How its own fittings are called, in the place of the way of joining: "flue elbow". Its lengths join without couplers. */
  readonly fittingsSaid?: string;
}

export interface TubeChoice {
  /** As the plan stores it: "22x0.9". */
  readonly size: string;
  /** As it is said: "22". */
  readonly nominal: string;
  readonly odMm: number;
}

export interface TubeKind extends TubeSpec {
  /** Smallest first. */
  readonly sizes: () => readonly TubeChoice[];
  /** As it is said at the counter; a size of no table is said by what stands before its wall. */
  readonly nominal: (size: string) => string;
  /** Outside diameter in mm; undefined where no table has the size. */
  readonly odMm: (size: string) => number | undefined;
}

function read(spec: TubeSpec): TubeChoice[] {
  const table = tables().find((t) => t.id === spec.sizesFromTable);
  if (!table) return [];
  return table.rows
    .filter((row) => spec.rows?.includes(row.key) ?? true)
    .flatMap((row) => {
      const od = figure(table, row.key, 'od');
      return od.is === 'known' ? [{ size: row.key, nominal: row.title ?? row.key, odMm: od.value ?? od.lo }] : [];
    })
    .sort((a, b) => a.odMm - b.odMm || (a.size < b.size ? -1 : 1));
}

export function defineTube(spec: TubeSpec): TubeKind {
  let known: readonly TubeChoice[] | undefined;
  const sizes = (): readonly TubeChoice[] => {
    known ??= read(spec);
    return known;
  };
  const find = (size: string) => sizes().find((s) => s.size === size) ?? sizes().find((s) => s.nominal === size);
  return {
    ...spec,
    sizes,
    nominal: (size) => find(size)?.nominal ?? size.split('x')[0] ?? size,
    odMm: (size) => find(size)?.odMm,
  };
}
