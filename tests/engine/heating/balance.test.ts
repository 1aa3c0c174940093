import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance, valveKv } from '../../../src/engine/heating/balance.ts';
import { partLoss } from '../../../src/engine/heating/section-loss.ts';
import { exact } from '../../../src/report/quantity.ts';

const ways = fc
  .array(
    fc.record({
      lossKPa: fc.double({ min: 0.1, max: 40, noNaN: true }),
      flowKgPerS: fc.double({ min: 0.004, max: 0.5, noNaN: true }),
      part: fc.double({ min: 0, max: 0.9, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((all) => all.map(({ part, ...w }, i) => ({ ...w, openKPa: part * w.lossKPa, id: `w${i}` })));

describe('balance', () => {
  test('with what each lockshield takes up, all ways lose alike', () => {
    fc.assert(
      fc.property(ways, fc.integer({ min: 30, max: 90 }), (all, tC) => {
        const found = balance(all, tC);
        expect(found?.pumpKPa).toBe(Math.max(...all.map((w) => w.lossKPa)));
        expect(found?.ways).toHaveLength(all.length);
        for (const w of found?.ways ?? []) {
          const valve =
            w.kv === null
              ? 0
              : (partLoss(exact(w.flowKgPerS, 'kg/s', 3), exact(w.kv, 'm3/h', 2), tC).value ?? Number.NaN);
          const rest = w.kv === null ? w.lossKPa : w.lossKPa - (w.openKPa ?? 0);
          expect(rest + valve).toBeCloseTo(found?.pumpKPa ?? Number.NaN, 6);
        }
      }),
    );
  });

  test('its index has nothing to take up; of two alike the first by id', () => {
    const found = balance(
      [
        { id: 'b', lossKPa: 4, flowKgPerS: 0.02 },
        { id: 'a', lossKPa: 4, flowKgPerS: 0.02 },
        { id: 'c', lossKPa: 1, flowKgPerS: 0.02 },
      ],
      65,
    );
    expect(found?.index).toBe('a');
    expect(found?.ways.map((w) => w.kv === null)).toEqual([true, true, false]);
  });

  test('no way, no balance; no loss, no flow factor', () => {
    expect(balance([], 65)).toBeNull();
    expect(valveKv(0.02, 0, 65)).toBeNull();
    expect(valveKv(0.02, 1, 200)).toBeNull();
  });
});
