import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tableFiles as pageFiles } from '../../src/reference/table-files.page.ts';
import { tableFiles } from '../../src/reference/table-files.ts';

const idsOf = (files: Readonly<Record<string, unknown>>) => Object.keys(files).map((path) => basename(path, '.json'));
const onPage = new Set(idsOf(pageFiles));
/** Ids of tables that are a word of the plan as well: code of the page says the word and asks for no table. */
const ALSO_WORDS = new Set(['boxing']);
/** Folders whose code runs in the page. */
const PAGE = ['catalogue', 'network', 'drawing', 'editor', 'files', 'geometry', 'plan', 'report', 'view'];

function* sources(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.tsx?$/.test(entry.name)) yield path;
  }
}

const src = new URL('../../src/', import.meta.url).pathname;

describe('the tables that come with the page', () => {
  test('are some of all, and not most', () => {
    expect(onPage.size).toBeGreaterThan(5);
    expect(onPage.size).toBeLessThan(idsOf(tableFiles).length / 2);
    for (const id of onPage) expect(idsOf(tableFiles)).toContain(id);
  });

  test('are every table that code of the page names', () => {
    const missing = PAGE.flatMap((folder) =>
      [...sources(join(src, folder))].flatMap((path) => {
        const text = readFileSync(path, 'utf8');
        const named = idsOf(tableFiles).filter((id) => !ALSO_WORDS.has(id) && text.includes(`'${id}'`));
        return named.filter((id) => !onPage.has(id)).map((id) => `${path.slice(src.length)}: ${id}`);
      }),
    );
    expect(missing).toEqual([]);
  });
});
