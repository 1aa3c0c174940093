import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawOffsOf, loadingScales, loadingUnits } from '../../../src/engine/water/loading-units.ts';
import { mainService } from '../../../src/engine/water/main-service.ts';
import { pipeFriction } from '../../../src/engine/water/pipe-friction.ts';

const unread = new Set(['bidet', 'sink-tap-1']);
const drawn = fc.constantFrom(...loadingScales()).chain((scale) =>
  fc.array(
    fc.record({
      scale: fc.constant(scale),
      draw: fc.constantFrom(...drawOffsOf(scale).filter((d) => !unread.has(d))),
      count: fc.nat(50),
    }),
    { minLength: 1, maxLength: 12 },
  ),
);

describe('adding loading units', () => {
  it('is free of order and of how the draw-offs are grouped', () => {
    fc.assert(
      fc.property(drawn, fc.nat(), (list, seed) => {
        const at = seed % list.length;
        const turned = [...list.slice(at), ...list.slice(0, at)].reverse();
        const [whole, other] = [loadingUnits(list).result, loadingUnits(turned).result];
        expect(other?.lo).toBeCloseTo(whole?.lo ?? Number.NaN, 9);
        const singly = list.flatMap((d) => Array.from({ length: d.count }, () => ({ ...d, count: 1 })));
        if (singly.length > 0) expect(loadingUnits(singly).result?.lo).toBeCloseTo(whole?.lo ?? Number.NaN, 9);
      }),
    );
  });

  it('cannot be told of nothing, of part of a tap, or on a scale that is not here', () => {
    expect(loadingUnits([]).missing).toEqual(['any draw-off']);
    for (const count of [-1, 0.5, Number.NaN]) {
      expect(loadingUnits([{ scale: 'BS 6700', draw: 'wc', count }]).result).toBeNull();
    }
    expect(loadingUnits([{ scale: 'none', draw: 'wc', count: 1 }]).missing).toEqual(['a scale none']);
  });
});

describe('friction', () => {
  const ask = (flowLps: number, boreMm: number | null) => pipeFriction({ flowLps, boreMm, boreSureness: 'page' });

  it('grows with flow and falls with bore', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.4, noNaN: true }),
        fc.double({ min: 14, max: 20, noNaN: true }),
        (flow, bore) => {
          const at = ask(flow, bore).result?.lo ?? Number.NaN;
          expect(ask(flow * 1.05, bore).result?.lo).toBeGreaterThan(at);
          expect(ask(flow, bore * 1.05).result?.lo).toBeLessThan(at);
        },
      ),
    );
  });

  it('is never read past the bores and velocities it was held to', () => {
    for (const [flow, bore] of [
      [0.05, 13.6],
      [0.5, 13.6],
      [0.2, 10.8],
      [2, 32.6],
      [0, 20.2],
      [Number.NaN, 20.2],
      [0.2, null],
    ] as const) {
      const working = ask(flow, bore);
      expect(working.result, `${flow} ${bore}`).toBeNull();
      expect(working.missing).toHaveLength(1);
    }
  });
});

describe('a main service', () => {
  const pipe = { label: 'P', size: '15', flowLps: 0.2, heightKpa: 0, lengthM: 5, kPaPerM: 2, valveKpa: 0 };
  const left = (sections: readonly (typeof pipe)[], atMainKpa = 300) =>
    mainService({ atMainKpa, sections, need: null });

  it('loses the same whole or cut in two', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (m) => {
        const cut = left([
          { ...pipe, lengthM: m },
          { ...pipe, lengthM: 20 - m },
        ]).result;
        expect(cut?.value).toBeCloseTo(left([{ ...pipe, lengthM: 20 }]).result?.value ?? Number.NaN, 6);
      }),
    );
  });

  it('that may use its pressure up has no answer, nor one with an unknown loss, need or main', () => {
    expect(left([pipe], 13).missing[0]).toContain('used up in P');
    expect(left([{ ...pipe, heightKpa: -290 }]).result).toBeNull();
    expect(left([]).result).toBeNull();
    expect(left([pipe], 0).missing).toEqual(['the pressure in the main']);
    expect(left([{ ...pipe, lengthM: -1 }]).result).toBeNull();
    const worked = { ...pipe, kPaPerM: null, size: '35' };
    expect(mainService({ atMainKpa: 300, sections: [worked], need: null }).missing[0]).toMatch(
      /^P: friction in a bore/,
    );
    expect(mainService({ atMainKpa: 300, sections: [pipe], need: 'pool' }).missing).toEqual(['what a pool needs']);
  });

  it('too fast a flow is told beside a loss that was read', () => {
    expect(left([{ ...pipe, flowLps: 0.5 }]).assumed.join()).toContain('P: 3.44 m/s is above the 3.0 m/s');
    expect(left([pipe]).assumed).toHaveLength(1);
  });
});
