import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { source, sources, table, tables } from '../../src/reference/tables.ts';

const names = (folder: string): string[] =>
  readdirSync(new URL(`../../shared/${folder}/`, import.meta.url))
    .filter((f) => f.endsWith('.json'))
    .map((f) => f.slice(0, -'.json'.length))
    .sort();
const raw = (folder: string, id: string): Record<string, unknown> =>
  JSON.parse(readFileSync(new URL(`../../shared/${folder}/${id}.json`, import.meta.url), 'utf8'));

describe('shared files', () => {
  it('every table and source on disk is loaded, under the name of its file', () => {
    expect(tables().map((t) => t.id)).toEqual(names('tables'));
    expect(sources().map((s) => s.id)).toEqual(names('sources'));
  });

  it.each(tables().map((t) => t.id))('%s cites an existing source and has whole rows', (id) => {
    const file = raw('tables', id) as {
      source: string;
      clause: string;
      columns: unknown[];
      rows: { cells: unknown[]; source?: string }[];
    };
    for (const cited of [file.source, ...file.rows.flatMap((r) => r.source ?? [])]) {
      expect(names('sources')).toContain(cited);
    }
    expect(file.clause.trim()).not.toBe('');
    for (const row of file.rows) expect(row.cells).toHaveLength(file.columns.length);
  });

  it.each(tables().map((t) => t.id))('%s runs the way it says', (id) => {
    const t = table(id);
    const grid = t.rows.map((r) => r.cells.map((c) => (typeof c === 'number' ? c : null)));
    const runs = (line: readonly (number | null)[], way: string): boolean => {
      const known = line.filter((c): c is number => c !== null);
      return known.every((c, i) => i === 0 || (way === 'rising' ? c > (known[i - 1] ?? c) : c < (known[i - 1] ?? c)));
    };
    for (const row of grid) expect(t.alongRow === null || runs(row, t.alongRow)).toBe(true);
    const columns = t.columns.map((_, i) => grid.map((row) => row[i] ?? null));
    for (const column of columns) expect(t.downColumn === null || runs(column, t.downColumn)).toBe(true);
  });

  it('a figure marked as read comes from a document that was read', () => {
    for (const t of tables()) {
      for (const row of t.rows) {
        const [sure, from] = [row.sureness ?? t.sureness, source(row.source ?? t.source)];
        if (sure === 'page') expect(`${t.id} ${row.key}: ${from.read}`).toMatch(/: page$/);
        if (sure === 'quotation') expect(`${t.id} ${row.key}: ${from.read}`).toMatch(/: (page|quotation)$/);
      }
    }
  });

  it('throws on an id that is not there', () => {
    expect(() => table('no-such-table')).toThrow('no-such-table');
    expect(() => source('no-such-source')).toThrow('no-such-source');
  });
});
