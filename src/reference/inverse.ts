import type { Sureness, Table } from './schema/table-schema.ts';

/**
 * Read a row backwards: at which column does it hold `wanted`? Linear between columns, only for a row that falls.
 * `pastLast`: the figure is under the last column's; `beforeFirst`: it is over the first column's. Both name that end,
 * because a bound may still be true there.
 */
export type Inverse =
  | { readonly is: 'known'; readonly at: number; readonly stepped: number; readonly sureness: Sureness }
  | { readonly is: 'pastLast'; readonly end: number; readonly endCell: number; readonly sureness: Sureness }
  | { readonly is: 'beforeFirst'; readonly end: number; readonly endCell: number; readonly sureness: Sureness }
  | { readonly is: 'unknown' };

/** `stepped` is the last listed column that still holds at least `wanted`: the rounded-down reading of a stepped look-up. */
export function inverse(table: Table, rowKey: string, wanted: number): Inverse {
  const row = table.rows.find((r) => r.key === rowKey);
  if (!row || table.columnAxis.lookUp !== 'linear' || table.alongRow !== 'falling') return { is: 'unknown' };
  const sureness = row.sureness ?? table.sureness;
  const points: { x: number; y: number }[] = [];
  for (const [i, cell] of row.cells.entries()) {
    if (typeof cell !== 'number') return { is: 'unknown' };
    points.push({ x: Number(table.columns[i]?.key), y: cell });
  }
  const first = points[0];
  const last = points[points.length - 1];
  if (!first || !last || Number.isNaN(wanted)) return { is: 'unknown' };
  if (wanted > first.y) return { is: 'beforeFirst', end: first.x, endCell: first.y, sureness };
  if (wanted < last.y) return { is: 'pastLast', end: last.x, endCell: last.y, sureness };
  const after = points.findIndex((p) => p.y <= wanted);
  const hit = points[after] ?? last;
  const before = points[after - 1] ?? hit;
  if (hit.y === wanted) return { is: 'known', at: hit.x, stepped: hit.x, sureness };
  return {
    is: 'known',
    at: before.x + ((hit.x - before.x) * (before.y - wanted)) / (before.y - hit.y),
    stepped: before.x,
    sureness,
  };
}
