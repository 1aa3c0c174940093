import * as fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import { planSchema, RECORD_MAPS } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { flatPlan } from '../demo/flat-plan.ts';
import { arbitraryOf } from '../fixtures/arbitrary-value.ts';

const recordOf = (map: (typeof RECORD_MAPS)[number]) => planSchema.entries[map].value as v.GenericSchema;

describe('every kind of record', () => {
  test.each(RECORD_MAPS)('%s: what the schema takes comes out as it went in, unknown fields too', (map) => {
    const withExtra = arbitraryOf(recordOf(map)).map((record) => ({
      ...(record as object),
      addedLater: { by: [1, 'x'] },
    }));
    fc.assert(
      fc.property(withExtra, (record) => {
        expect(v.parse(recordOf(map), record)).toEqual(record);
      }),
      { numRuns: 40 },
    );
  });

  test.each(RECORD_MAPS)('%s: lacks no field that it needs', (map) => {
    const [record] = fc.sample(arbitraryOf(recordOf(map)), { numRuns: 1, seed: 11 }) as [Record<string, unknown>];
    const entries = (recordOf(map) as unknown as { entries: Record<string, { type: string }> }).entries;
    for (const [field, { type }] of Object.entries(entries)) {
      const { [field]: _left, ...rest } = { ...record };
      // What a later minor version added may be left out: older files do.
      expect(v.is(recordOf(map), rest), field).toBe(type === 'exact_optional');
    }
  });
});

describe('what no record takes', () => {
  const leg = Object.values(flatPlan().legs)[0];
  const wall = flatPlan().walls.BW;
  test.each([
    ['a length that is no number', recordOf('walls'), { ...wall, thicknessMm: Number.NaN }],
    ['a length without end', recordOf('walls'), { ...wall, thicknessMm: Number.POSITIVE_INFINITY }],
    ['a negative size', recordOf('walls'), { ...wall, thicknessMm: -1 }],
    ['a place in the next town', recordOf('walls'), { ...wall, a: { x: 1_000_001, y: 0 } }],
    ['an empty id', recordOf('legs'), { ...leg, run: '' }],
    ['a size that is a number', recordOf('legs'), { ...leg, tube: { kind: 'copper', size: 22 } }],
    ['text without end', recordOf('walls'), { ...wall, construction: 'x'.repeat(20_001) }],
  ])('%s', (_what, schema, record) => {
    expect(v.is(schema, record)).toBe(false);
  });

  test('a day that is not in the calendar', () => {
    const { basis } = planSchema.entries;
    const told = flatPlan().basis;
    expect(v.is(basis, told)).toBe(true);
    expect(v.is(basis, { ...told, surveyDate: '2026-13-01' })).toBe(false);
    expect(v.is(basis, { ...told, surveyDate: '1 May 2026' })).toBe(false);
  });
});

describe('an empty plan', () => {
  const plan = emptyPlan({ id: 'j', name: 'Job', storey: 's', option: 'o', ceilingMm: 2400, buildUpMm: 250 });
  test('is sound, with one assumed floor and one option', () => {
    expect(v.safeParse(planSchema, plan).issues).toBeUndefined();
    expect(danglingReferences(plan)).toEqual([]);
    expect(plan.storeys.s).toMatchObject({ ceilingMm: 2400, buildUpMm: 250, sureness: 'assumed' });
    expect(plan.options.o?.fates).toEqual({});
  });
  test('has every map of records', () => {
    for (const map of RECORD_MAPS) expect(typeof plan[map], map).toBe('object');
  });
});
