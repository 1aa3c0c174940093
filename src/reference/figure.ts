import { type OnAxis, place } from './axis.ts';
import type { Cell, Sureness, Table } from './schema/table-schema.ts';
import { table as tableById } from './tables.ts';

export interface TableCite {
  readonly source: string;
  readonly clause: string;
  readonly table: string;
}

/** A figure out of a table, with its doubt and where it stands. It has the shape of a report quantity. */
export interface Known {
  readonly is: 'known';
  readonly lo: number;
  readonly hi: number | null;
  readonly value: number | null;
  readonly unit: string;
  readonly digits: number;
  readonly sureness: Sureness;
  readonly cite: TableCite;
  readonly note: string | null;
}

/** Asked past an end of the table: it never answers by extrapolation. */
export interface Outside {
  readonly is: 'outside';
  readonly axis: string;
  readonly asked: number | string;
  readonly from: number | null;
  readonly to: number | null;
  readonly cite: TableCite;
}

/** The table has no such row or column, or a cell nobody has read. `say` names what is missing. */
export interface Unknown {
  readonly is: 'unknown';
  readonly say: string;
  readonly cite: TableCite;
}

export type Figure = Known | Outside | Unknown;

export interface KnownWord {
  readonly is: 'known';
  readonly word: string;
  readonly sureness: Sureness;
  readonly cite: TableCite;
  readonly note: string | null;
}

const ORDER: readonly Sureness[] = ['page', 'quotation', 'derived', 'practice', 'memory'];
const worst = (of: readonly Sureness[]): Sureness => ORDER[Math.max(0, ...of.map((s) => ORDER.indexOf(s)))] ?? 'memory';

type Found = { readonly cell: Cell; readonly weight: number; readonly row: number; readonly column: number };

function citeOf(table: Table, rows: readonly number[]): TableCite {
  const row = rows.map((i) => table.rows[i]).find((r) => r?.source !== undefined || r?.clause !== undefined);
  return { source: row?.source ?? table.source, clause: row?.clause ?? table.clause, table: table.id };
}

function cellsAt(table: Table, rows: OnAxis & { is: 'known' }, columns: OnAxis & { is: 'known' }): Found[] {
  return rows.parts.flatMap((r) =>
    columns.parts.map((c) => ({
      cell: table.rows[r.index]?.cells[c.index] ?? null,
      weight: r.weight * c.weight,
      row: r.index,
      column: c.index,
    })),
  );
}

function mix(table: Table, found: readonly Found[]): Figure {
  const cite = citeOf(
    table,
    found.map((f) => f.row),
  );
  let [lo, hi, value]: [number, number | null, number | null] = [0, 0, 0];
  const sure: Sureness[] = [];
  for (const { cell, weight, row } of found) {
    if (cell === null || typeof cell === 'string') {
      return { is: 'unknown', say: `${table.title}: no figure for ${table.rows[row]?.key}`, cite };
    }
    const c = typeof cell === 'number' ? { lo: cell, hi: cell, value: cell } : cell;
    lo += weight * c.lo;
    hi = hi === null || c.hi === null ? null : hi + weight * c.hi;
    value = value === null || c.value === undefined ? null : value + weight * c.value;
    const own = 'sureness' in c ? c.sureness : undefined;
    sure.push(own ?? table.rows[row]?.sureness ?? table.sureness);
  }
  const first = found[0];
  const column = table.columns[first?.column ?? 0];
  const note = table.rows[first?.row ?? 0]?.note ?? null;
  return {
    is: 'known',
    lo,
    hi,
    value,
    unit: column?.unit ?? '',
    digits: column?.digits ?? 2,
    sureness: worst(sure),
    cite,
    note,
  };
}

interface Keys {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
}
const KEYS = new WeakMap<Table, Keys>();

function keysOf(table: Table): Keys {
  const known = KEYS.get(table);
  if (known) return known;
  const keys = { rows: table.rows.map((r) => r.key), columns: table.columns.map((c) => c.key) };
  KEYS.set(table, keys);
  return keys;
}

function find(table: Table, row: string | number, column: string | number | undefined): Found[] | Outside | Unknown {
  const cite = citeOf(table, []);
  const keys = keysOf(table);
  const only = column === undefined && keys.columns.length === 1 ? keys.columns[0] : column;
  const onRows = place(table.rowAxis, keys.rows, row);
  const onColumns = place(table.columnAxis, keys.columns, only ?? '');
  for (const [axis, on, asked] of [
    [table.rowAxis, onRows, row],
    [table.columnAxis, onColumns, column ?? ''],
  ] as const) {
    if (on.is === 'outside') return { is: 'outside', axis: axis.id, asked, from: axis.from, to: axis.to, cite };
    if (on.is === 'unlisted')
      return { is: 'unknown', say: `${table.title}: nothing for ${axis.title} "${asked}"`, cite };
  }
  if (onRows.is !== 'known' || onColumns.is !== 'known') throw new Error('unreachable');
  return cellsAt(table, onRows, onColumns);
}

/**
 * A figure by the table's own rule. The column may be left out where there is only one.
 * Throws on an unknown table id; everything else is an answer: known, outside or unknown.
 */
export function figure(from: string | Table, row: string | number, column?: string | number): Figure {
  const table = typeof from === 'string' ? tableById(from) : from;
  // Flows and lengths are asked for once and never again: only names are worth keeping.
  if (typeof row === 'number' || typeof column === 'number') return read(table, row, column);
  const kept = ANSWERS.get(table) ?? new Map<string, Figure>();
  ANSWERS.set(table, kept);
  const key = column === undefined ? row : `${row}\n${column}`;
  const answer = kept.get(key) ?? read(table, row, column);
  kept.set(key, answer);
  return answer;
}

const ANSWERS = new WeakMap<Table, Map<string, Figure>>();

function read(table: Table, row: string | number, column: string | number | undefined): Figure {
  const found = find(table, row, column);
  return Array.isArray(found) ? mix(table, found) : found;
}

/** A word out of a table of words, by exact keys. */
export function word(from: string | Table, row: string | number, column?: string | number): KnownWord | Unknown {
  const table = typeof from === 'string' ? tableById(from) : from;
  const found = find(table, row, column);
  const first = Array.isArray(found) ? found[0] : undefined;
  const cite = citeOf(table, first ? [first.row] : []);
  if (!first || typeof first.cell !== 'string')
    return { is: 'unknown', say: `${table.title}: nothing for "${row}"`, cite };
  const inRow = table.rows[first.row];
  return {
    is: 'known',
    word: first.cell,
    sureness: inRow?.sureness ?? table.sureness,
    cite,
    note: inRow?.note ?? null,
  };
}

/** A constant of a method: one exact figure that the table is bound to have. Throws when it has not. */
export function constant(from: string | Table, row: string | number, column?: string | number): number {
  const found = figure(from, row, column);
  if (found.is !== 'known' || found.value === null) throw new Error(`no constant at ${row}, ${column ?? ''}`);
  return found.value;
}
