import { describe, expect, test } from 'vitest';
import { VERSION } from '../../src/plan/envelope.ts';
import { inOrder, type Migration, migrate, migrations } from '../../src/plan/migrations/migrate.ts';

const step = (from: number, up: Migration['up'] = (e) => ({ ...e, [`to${from + 1}`]: true })): Migration => ({
  from,
  what: `step ${from}`,
  up,
});

describe('migrations', () => {
  test('lead to the version of this code, one by one', () => {
    expect(migrations.map((m) => m.from)).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 1));
  });

  test('leave a file of this version as it is', () => {
    const envelope = { format: 'kickset-plan', version: VERSION, plan: { odd: 1 } };
    const done = migrate(envelope);
    expect(done).toEqual({ ok: true, envelope, done: [] });
    expect(done.ok && done.envelope).toBe(envelope);
  });

  test('run in order from the version of the file', () => {
    const steps = [step(2), step(1), step(3)];
    expect(migrate({ version: 2, plan: {} }, steps, 4)).toEqual({
      ok: true,
      envelope: { version: 4, plan: {}, to3: true, to4: true },
      done: ['step 2', 'step 3'],
    });
    expect(migrate({ version: 1 }, steps, 4)).toMatchObject({
      envelope: { version: 4, to2: true, to3: true, to4: true },
    });
  });

  test('never touch what they are given', () => {
    const envelope = { version: 1, plan: { runs: { r1: { size: 22 } } } };
    const before = structuredClone(envelope);
    const spoil: Migration['up'] = (e) => {
      (e as typeof envelope).plan.runs.r1.size = 15;
      return e;
    };
    expect(migrate(envelope, [step(1, spoil)], 2)).toMatchObject({
      envelope: { plan: { runs: { r1: { size: 15 } } } },
    });
    expect(envelope).toEqual(before);
  });

  test('a step that fails says which', () => {
    const fails = step(1, () => {
      throw new Error('no such field');
    });
    expect(migrate({ version: 1 }, [fails], 2)).toEqual({
      ok: false,
      why: 'it could not be brought from version 1 to 2 (step 1)',
    });
  });

  test.each([
    ['a gap', [step(1), step(3)], 4, 'migration 2 is wanted, 3 stands there'],
    ['two for one', [step(1), step(1)], 3, 'migration 2 is wanted, 1 stands there'],
    ['too few', [step(1)], 3, 'version 3 needs 2 migrations, there are 1'],
    ['too many', [step(1), step(2)], 2, 'version 2 needs 1 migrations, there are 2'],
  ])('%s throws', (_what, steps, to, why) => {
    expect(() => inOrder(steps, to)).toThrow(why);
  });

  test('a version that is none is refused', () => {
    for (const version of [0, 1.2, '1', undefined]) expect(migrate({ version })).toMatchObject({ ok: false });
  });
});
