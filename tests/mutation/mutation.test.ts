import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { beforeAll, describe, expect, test } from 'vitest';
import { bundleTests } from './bundle.ts';
import { deafTests, type Hunt, likelyFor, whoNotices } from './hunt.ts';
import { placeName, placesOf, readFolder, testsOf } from './mutants.ts';

const UNNOTICED = new URL('./unnoticed.json', import.meta.url);
/** Read on every run; all are read by npm run mutate, which takes half an hour. */
const SAMPLE = 24;
const PRIME = 7919;
const ALL = process.env.KICKSET_MUTATE === '1';

/** Numbers whose change nobody notices yet, as the last whole run found them. */
const unnoticed = (): readonly string[] => JSON.parse(readFileSync(UNNOTICED, 'utf8')) as string[];

let hunt: Hunt;
const tables = readFolder('tables');
const places = placesOf(tables);

describe('a number changed in a table is noticed by a test of the world', () => {
  beforeAll(async () => {
    const load = testsOf(await bundleTests());
    hunt = { tables, load, deaf: await deafTests(tables, load) };
  }, 120_000);

  test('those tests hold with the tables as they are', () => {
    expect([...hunt.deaf]).toEqual([]);
  });

  test.skipIf(ALL)(`${SAMPLE} of them, spread over all tables`, { timeout: 300_000 }, async () => {
    const known = new Set(unnoticed());
    const open = places.filter((p) => !known.has(placeName(p)));
    const sample = Array.from({ length: SAMPLE }, (_, i) => open[(i * PRIME) % open.length]).flatMap((p) => p ?? []);
    const missed: string[] = [];
    for (const place of sample) if ((await whoNotices(hunt, place, [], false)) === null) missed.push(placeName(place));
    expect(missed).toEqual([]);
  });

  test('the list of unnoticed ones names numbers that are there', () => {
    const there = new Set(places.map(placeName));
    expect(unnoticed().filter((name) => !there.has(name))).toEqual([]);
    expect(unnoticed().length / places.length).toBeLessThan(0.1);
  });

  test.runIf(ALL)('all of them', { timeout: 3 * 3_600_000 }, async () => {
    const missed: string[] = [];
    for (const table of Object.keys(tables)) {
      const mine = places.filter((p) => p.table === table);
      const likely = await likelyFor(
        hunt,
        table,
        mine.map((p) => p.way),
      );
      for (const place of mine) {
        const who = likely?.length === 0 ? null : await whoNotices(hunt, place, likely ?? [], likely !== null);
        if (who === null) missed.push(placeName(place));
      }
      process.stdout.write(`${table}: ${mine.length} numbers, ${missed.length} unnoticed so far\n`);
      writeFileSync(UNNOTICED, `${JSON.stringify(missed, null, 2)}\n`);
    }
  });
});
