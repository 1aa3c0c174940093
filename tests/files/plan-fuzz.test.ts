import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPlan, isObject } from '../../src/files/format/check-plan.ts';
import { type ReadPlan, readPlan } from '../../src/files/format/read-plan.ts';
import { RECORD_MAPS } from '../../src/plan/plan.ts';

const text = readFileSync(fileURLToPath(new URL('../fixtures/version-1.plan.json', import.meta.url)), 'utf8');

/** The one thing that holds for every answer: it is whole, it is told, and nothing goes without being named. */
function holds(given: string, read: ReadPlan): void {
  if (read.kind === 'ok') {
    expect(read.plan).toEqual(JSON.parse(given).plan);
    expect(checkPlan(read.plan as unknown as Record<string, unknown>)).toEqual([]);
    return;
  }
  expect(read.sentence).toMatch(/^[A-Z0-9].*\.$/s);
  if (read.kind !== 'broken') return;
  expect(read.problems.length).toBeGreaterThan(0);
  if (read.salvage === null) return;
  expect(checkPlan(read.salvage as unknown as Record<string, unknown>)).toEqual([]);
  const raw = parsed(given);
  if (!isObject(raw)) return;
  const named = new Set(read.dropped.map((p) => `${p.map}/${p.id}`));
  for (const map of RECORD_MAPS) {
    const records = raw[map];
    if (!isObject(records)) continue;
    for (const [id, record] of Object.entries(records)) {
      if (named.has(`${map}/${id}`)) continue;
      expect(read.salvage[map][id], `${map} ${id}`).toEqual(record);
    }
  }
}

function parsed(given: string): unknown {
  try {
    return JSON.parse(given).plan;
  } catch {
    return undefined;
  }
}

const place = fc.nat({ max: text.length - 1 });
const slip = fc.oneof(
  fc.record({ kind: fc.constant('cut' as const), at: place, length: fc.integer({ min: 1, max: 200 }) }),
  fc.record({
    kind: fc.constant('put' as const),
    at: place,
    what: fc.oneof(
      fc.string({ maxLength: 4 }),
      fc.constantFrom('"', '{', '}', '[', ',', ':', '1e999', 'null', '-', '\\'),
    ),
  }),
);

describe('a file that went wrong', () => {
  test('never throws and never loses without a word, whatever slipped', () => {
    fc.assert(
      fc.property(fc.array(slip, { minLength: 1, maxLength: 3 }), (slips) => {
        let given = text;
        for (const s of slips) {
          given =
            given.slice(0, s.at) +
            (s.kind === 'put' ? s.what : '') +
            given.slice(s.at + (s.kind === 'cut' ? s.length : 0));
        }
        holds(given, readPlan(given));
      }),
      { numRuns: 400 },
    );
  });

  test('cut anywhere is damaged or no job, never sound', () => {
    fc.assert(
      fc.property(fc.nat({ max: text.lastIndexOf('}') }), (at) => {
        const read = readPlan(text.slice(0, at));
        expect(read.kind === 'ok' || read.kind === 'newer').toBe(false);
        holds(text.slice(0, at), read);
      }),
      { numRuns: 300 },
    );
  });

  test('one value swapped for another of any kind', () => {
    const values = fc.constantFrom('null', '7', '-1', '"x"', '[]', '{}', 'true', '1e999', '1e300', '""');
    const starts = [...text.matchAll(/: ("[^"]*"|[-\d.]+|null|true|false)/g)].map((m) => [
      m.index + 2,
      m[1]?.length ?? 0,
    ]);
    fc.assert(
      fc.property(fc.constantFrom(...starts), values, ([at = 0, length = 0], value) => {
        const given = text.slice(0, at) + value + text.slice(at + length);
        holds(given, readPlan(given));
      }),
      { numRuns: 400 },
    );
  });

  test('anything at all', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (given) => holds(given, readPlan(given))),
      { numRuns: 500 },
    );
  });
});
