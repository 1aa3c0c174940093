import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendC, hotShare } from '../../../src/engine/preheat/blend.ts';
import { kWhPerLitre, kwAt } from '../../../src/engine/preheat/heat-added.ts';
import { preheatSum } from '../../../src/engine/preheat/preheat-sum.ts';
import { type StateAsk, traceState } from '../../../src/engine/preheat/trace-state.ts';

const celsius = fc.double({ min: 1, max: 100, noNaN: true });
const setting = fc.option(celsius, { nil: null });
const outlet = fc.oneof(
  fc.record({ is: fc.constant('mixing' as const), setC: setting }),
  fc.constant({ is: 'bare' as const }),
  fc.constant({ is: 'unseen' as const }),
);
const valve = fc.oneof(
  fc.record({ is: fc.constant('mixing' as const), setC: setting }),
  fc.record({ is: fc.constant('diverting' as const), aboveC: setting }),
);
const ask: fc.Arbitrary<StateAsk> = fc
  .record({
    vesselC: celsius,
    cold: celsius,
    valves: fc.array(valve, { maxLength: 2 }),
    heaterSetC: setting,
    outlet,
    past: outlet,
  })
  // Nothing in the house is colder than the main.
  .map(({ cold, ...rest }) => ({ ...rest, coldC: Math.min(cold, rest.vesselC) }));

describe('water through a preheat', () => {
  it('never comes out hotter than the hottest of vessel and heater, nor colder than the coldest that is mixed in', () => {
    fc.assert(
      fc.property(ask, (a) => {
        const t = traceState(a);
        const lowest = [a.outlet, a.past, ...a.valves].flatMap((v) => ('setC' in v && v.setC !== null ? [v.setC] : []));
        expect(t.outletC.lo).toBeLessThanOrEqual(t.outletC.hi);
        expect(t.outletC.hi).toBeLessThanOrEqual(Math.max(a.vesselC, a.heaterSetC ?? 0));
        expect(t.outletC.lo).toBeGreaterThanOrEqual(Math.min(a.coldC, ...lowest));
      }),
    );
  });

  it('comes to the heater no warmer than a mixing valve ahead of it is set to', () => {
    fc.assert(
      fc.property(ask, celsius, (a, setC) => {
        const t = traceState({ ...a, valves: [...a.valves, { is: 'mixing', setC }] });
        if (t.inletC) expect(t.inletC.hi).toBeLessThanOrEqual(setC);
      }),
    );
  });

  it('asks no heat of a heater whose inlet is as warm as it is set to, and more the colder it comes', () => {
    fc.assert(
      fc.property(celsius, celsius, celsius, (one, other, setC) => {
        const of = (vesselC: number) =>
          traceState({
            vesselC,
            coldC: 1,
            valves: [],
            heaterSetC: setC,
            outlet: { is: 'bare' },
            past: { is: 'unseen' },
          }).addedKWhPerL?.hi ?? Number.NaN;
        expect(of(Math.max(one, setC))).toBe(0);
        expect(of(Math.min(one, other))).toBeGreaterThanOrEqual(of(Math.max(one, other)) - 1e-12);
      }),
    );
  });

  it('knows only bounds where a valve was not read', () => {
    const base = { coldC: 10, heaterSetC: null, outlet: { is: 'bare' }, past: { is: 'bare' } } as const;
    const mixing = traceState({ ...base, vesselC: 70, valves: [{ is: 'mixing', setC: null }] });
    expect(mixing.inletC).toEqual({ lo: 10, hi: 70 });
    const diverting = traceState({ ...base, vesselC: 70, valves: [{ is: 'diverting', aboveC: null }] });
    expect(diverting.goes).toBe('either');
    expect(diverting.outletC).toEqual({ lo: 70, hi: 70 });
  });

  it('goes past the heater above what the diverting valve is set to, and through it below', () => {
    const at = (vesselC: number) =>
      traceState({
        vesselC,
        coldC: 10,
        valves: [{ is: 'diverting', aboveC: 48 }],
        heaterSetC: 50,
        outlet: { is: 'bare' },
        past: { is: 'mixing', setC: 46 },
      });
    expect(at(70)).toMatchObject({ goes: 'past', inletC: null, outletC: { lo: 46, hi: 46 } });
    expect(at(47)).toMatchObject({ goes: 'through', inletC: { lo: 47, hi: 47 }, outletC: { lo: 50, hi: 50 } });
  });
});

describe('blends', () => {
  it('hold as much heat as went into them', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), celsius, celsius, (share, hot, cold) => {
        const mixed = blendC(share, hot, cold);
        expect(mixed).toBeCloseTo(share * hot + (1 - share) * cold, 9);
        expect(mixed).toBeLessThanOrEqual(Math.max(hot, cold) + 1e-9);
        const back = hotShare(mixed, hot, cold);
        // Of two waters of one temperature any share gives the same.
        if (hot - cold > 0.1 && back !== null) expect(back).toBeCloseTo(share, 6);
      }),
    );
  });

  it('of a temperature that neither reaches there is none', () => {
    expect(hotShare(60, 50, 10)).toBeNull();
    expect(hotShare(5, 50, 10)).toBeNull();
    expect(hotShare(40, 10, 10)).toBeNull();
  });
});

describe('heat added', () => {
  it('adds up over parts of a rise, but for the weight of a litre, and is nothing downhill', () => {
    const whole = kWhPerLitre(10, 60) ?? Number.NaN;
    const parts = (kWhPerLitre(10, 30) ?? Number.NaN) + (kWhPerLitre(30, 60) ?? Number.NaN);
    expect(Math.abs(parts - whole) / whole).toBeLessThan(0.003);
    expect(kWhPerLitre(70, 60)).toBe(0);
  });

  it('is not told where water is not', () => {
    expect(kWhPerLitre(10, 200)).toBeNull();
    expect(kwAt(9, -40, 60)).toBeNull();
  });

  it('says that a heater stays off, and what is missing', () => {
    const off = preheatSum({ lPerMin: 9, preheatC: 70, coldC: 10, setC: 50, share: 1 });
    expect(off.result?.value).toBe(0);
    expect(off.assumed[0]).toMatch(/scalds/);
    expect(preheatSum({ lPerMin: 9, preheatC: 70, coldC: 10, setC: 50, share: 0.5 }).steps[0]?.result?.value).toBe(40);
    expect(preheatSum({ lPerMin: 0, preheatC: 70, coldC: 10, setC: 50, share: 1 }).missing).toEqual(['a flow']);
  });
});
