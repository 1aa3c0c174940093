import * as v from 'valibot';
import { type Source, sourceSchema } from './schema/source-schema.ts';
import { type Axis, type Table, tableSchema } from './schema/table-schema.ts';

type Files = Readonly<Record<string, unknown>>;

/** Files in the order of their ids. Throws, naming the file, on a bad shape or an id that is taken. */
function readAll<T extends { readonly id: string }>(files: Files, parse: (raw: unknown) => T): ReadonlyMap<string, T> {
  const read = Object.entries(files).map(([path, raw]) => {
    try {
      return { path, entry: parse(raw) };
    } catch (e) {
      throw new Error(`${path}: ${e instanceof Error ? e.message : String(e)}`);
    }
  });
  read.sort((a, b) => (a.entry.id < b.entry.id ? -1 : a.entry.id > b.entry.id ? 1 : 0));
  const found = new Map<string, T>();
  for (const { path, entry } of read) {
    if (found.has(entry.id)) throw new Error(`${path}: the id "${entry.id}" is taken`);
    found.set(entry.id, entry);
  }
  return found;
}

/** Keys of a numbered axis must be numbers, rising, with the validity written on the axis at both ends. */
function checkAxis(axis: Axis, keys: readonly string[]): void {
  if (new Set(keys).size !== keys.length) throw new Error(`the ${axis.id} axis lists a key twice`);
  if (axis.lookUp === 'none') return;
  const at = keys.map(Number);
  if (at.some((n) => !Number.isFinite(n)))
    throw new Error(`the ${axis.id} axis is read between keys but is not numbers`);
  if (at.some((n, i) => i > 0 && n <= (at[i - 1] ?? n))) throw new Error(`the ${axis.id} axis does not rise`);
  if (axis.from !== at[0] || axis.to !== at[at.length - 1])
    throw new Error(`the ${axis.id} axis is valid where its keys are`);
}

function parseTable(raw: unknown): Table {
  const table = v.parse(tableSchema, raw);
  const keys = table.columns.map((c) => c.key);
  for (const row of table.rows) {
    if (row.cells.length !== keys.length)
      throw new Error(`row "${row.key}" has ${row.cells.length} of ${keys.length} cells`);
  }
  checkAxis(table.columnAxis, keys);
  checkAxis(
    table.rowAxis,
    table.rows.map((r) => r.key),
  );
  return table;
}

export const readSources = (files: Files): ReadonlyMap<string, Source> =>
  readAll(files, (raw) => v.parse(sourceSchema, raw));

/**
 * Every source a table names must exist, and every topic must have exactly one default. Throws otherwise. Where no sources are
 * given at all, they are not asked for.
 */
export function readTables(files: Files, sources: ReadonlyMap<string, Source>): ReadonlyMap<string, Table> {
  const found = readAll(files, parseTable);
  const defaults = new Map<string, number>();
  for (const table of found.values()) {
    for (const source of [table.source, ...table.rows.flatMap((r) => r.source ?? [])]) {
      if (sources.size > 0 && !sources.has(source))
        throw new Error(`table "${table.id}" cites an unknown source "${source}"`);
    }
    if (table.topic !== null) defaults.set(table.topic, (defaults.get(table.topic) ?? 0) + (table.isDefault ? 1 : 0));
  }
  for (const [topic, count] of defaults) {
    if (count !== 1 && sources.size > 0) throw new Error(`topic "${topic}" has ${count} default tables`);
  }
  return found;
}
