import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designFlow, heatOf } from '../../../src/engine/heating/design-flow.ts';
import { flowSum } from '../../../src/engine/heating/flow-sum.ts';
import { pipeLoss } from '../../../src/engine/heating/section-loss.ts';
import { middle, rising, total } from '../../../src/engine/heating/spread.ts';
import { tempsOf } from '../../../src/engine/heating-system/design-temps.ts';
import { headState } from '../../../src/engine/heating-system/pump-head.ts';
import { tube } from '../../../src/reference/tubes.ts';
import { between, exact, type Quantity } from '../../../src/report/quantity.ts';

const interval = fc
  .tuple(fc.double({ min: 0.001, max: 20, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }))
  .map(([lo, more]): Quantity => between(lo, lo + more, 'kg/s', 3, 'page', lo + more / 2));

describe('figures with doubt', () => {
  test('what rises with its parts keeps its best between its ends', () => {
    fc.assert(
      fc.property(interval, interval, (a, b) => {
        const q = rising([a, b], 'kPa', 2, (x, y) => x * y + x);
        expect(q.lo).toBeLessThanOrEqual(q.value ?? Number.NaN);
        expect(q.value ?? Number.NaN).toBeLessThanOrEqual(q.hi ?? Number.NaN);
      }),
    );
  });

  test('a part without a top leaves the whole without one; the low side stays', () => {
    const open = { ...exact(2, 'kPa', 1), hi: null, value: null };
    const sum = total([open, exact(3, 'kPa', 1)], 'kPa', 1);
    expect(sum).toMatchObject({ lo: 5, hi: null, value: null });
    expect(middle(sum)).toBe(5);
    expect(total([], 'kPa', 1)).toMatchObject({ lo: 0, hi: 0 });
  });

  test('it is as sure as the least sure of its parts', () => {
    expect(total([exact(1, 'm', 1, 'page'), exact(1, 'm', 1, 'memory')], 'm', 1).sureness).toBe('memory');
  });
});

describe('design flow', () => {
  test('carries its heat again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 60, noNaN: true }),
        fc.integer({ min: 35, max: 95 }),
        fc.integer({ min: 3, max: 30 }),
        (kW, flowC, kelvin) => {
          const temps = { flowC, returnC: flowC - kelvin };
          const flow = designFlow(exact(kW, 'kW', 1), temps)?.value ?? Number.NaN;
          expect(flow * (heatOf(temps) ?? Number.NaN)).toBeCloseTo(kW, 9);
        },
      ),
    );
  });

  test('none where water does not cool, or is steam', () => {
    expect(designFlow(exact(5, 'kW', 1), { flowC: 60, returnC: 60 })).toBeNull();
    expect(designFlow(exact(5, 'kW', 1), { flowC: 240, returnC: 200 })).toBeNull();
  });

  test('temperatures: as told, else by the usual difference, and said so', () => {
    expect(tempsOf(70, 50)).toMatchObject({ flowC: 70, returnC: 50, differenceK: 20, assumed: null });
    expect(tempsOf(55, null)).toMatchObject({ flowC: 55, returnC: 35, differenceK: 20 });
    expect(tempsOf(null, 40)).toMatchObject({ flowC: 60, returnC: 40 });
    expect(tempsOf(null, null).assumed).toBe('designed for 75 flow and 55 return, 20 K between them');
  });
});

describe('loss of a pipe', () => {
  const ask = (flow: Quantity, boreMm = 20.2) => ({
    flow,
    tubeKind: 'copper',
    boreMm,
    tC: 75,
    lengthM: exact(10, 'm', 1),
    fittingsM: exact(2, 'm', 1),
    kvs: [],
  });

  test('more with more flow and less with more bore', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.4, noNaN: true }), (flow) => {
        const at = (f: number, bore: number) => pipeLoss(ask(exact(f, 'kg/s', 3), bore))?.loss.value ?? Number.NaN;
        expect(at(flow * 1.1, 20.2)).toBeGreaterThan(at(flow, 20.2));
        expect(at(flow, 26.2)).toBeLessThan(at(flow, 20.2));
      }),
    );
  });

  test('fittings count as metres, parts by their flow factor', () => {
    const bare = pipeLoss({ ...ask(exact(0.2, 'kg/s', 3)), fittingsM: exact(0, 'm', 1) });
    const fitted = pipeLoss(ask(exact(0.2, 'kg/s', 3)));
    expect((fitted?.loss.value ?? 0) / (bare?.loss.value ?? 1)).toBeCloseTo(1.2, 6);
    const filtered = pipeLoss({ ...ask(exact(0.2, 'kg/s', 3)), kvs: [between(5, 12, 'm3/h', 1)] });
    expect(filtered?.loss.hi ?? 0).toBeGreaterThan(fitted?.loss.hi ?? 0);
    expect(filtered?.loss.lo ?? 0).toBeGreaterThan(fitted?.loss.lo ?? 0);
  });

  test('a tube without roughness and water without figures have none', () => {
    expect(pipeLoss({ ...ask(exact(0.2, 'kg/s', 3)), tubeKind: 'flue' })).toBeNull();
    expect(pipeLoss({ ...ask(exact(0.2, 'kg/s', 3)), tC: 130 })).toBeNull();
  });
});

describe('loss against the head left', () => {
  test.each([
    [between(3, 5, 'kPa', 1), 20, 'pass'],
    [between(21, 25, 'kPa', 1), 20, 'check'],
    [between(15, 25, 'kPa', 1), 20, 'note'],
    [between(3, null, 'kPa', 1), 20, 'note'],
    [between(3, 5, 'kPa', 1), null, 'cantTell'],
    [null, 20, 'none'],
  ] as const)('%o against %s: %s', (lost, head, state) => {
    expect(headState(lost, head)).toBe(state);
  });
});

describe('flow of a heat, as a sum', () => {
  test('told in kg/s, by the minute and hour, and in a pipe', () => {
    const sum = flowSum({
      kW: 12,
      temps: { flowC: 75, returnC: 55 },
      extraPercent: 0,
      tube: tube('copper', '22') ?? null,
      assumed: [],
    });
    expect(sum.result?.value).toBeCloseTo(0.1433, 3);
    const values = Object.fromEntries(sum.steps.map((s) => [s.label, s.result?.value]));
    expect(values['By volume']).toBeCloseTo(8.77, 1);
    expect(values['In an hour']).toBeCloseTo((values['By volume'] ?? 0) * 60, 6);
    expect(values['Velocity in 22']).toBeCloseTo(0.456, 2);
  });

  test('nothing where the return is the warmer', () => {
    const sum = flowSum({ kW: 12, temps: { flowC: 50, returnC: 60 }, extraPercent: 0, tube: null, assumed: [] });
    expect(sum.result).toBeNull();
    expect(sum.missing).toEqual(['a flow that is warmer than the return']);
  });
});
