import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutJudgement } from '../../../src/engine/building/joist-cuts.ts';
import { spacingFault } from '../../../src/engine/structure/cut-spacing.ts';
import { holeFor, joistCut } from '../../../src/engine/structure/joist-cut.ts';
import { type JoistAsk, joistFaults } from '../../../src/engine/structure/joist-faults.ts';
import { bandsFromOneEnd, cutLimits, inBand } from '../../../src/engine/structure/joist-limits.ts';
import { table } from '../../../src/reference/tables.ts';

const LIMITS = table('joist-limits');
const span = fc.integer({ min: 1000, max: 6000 });
const depth = fc.integer({ min: 101, max: 300 });
const judge = cutJudgement();

const ask = (change: Partial<JoistAsk> = {}): JoistAsk => ({
  kind: 'solid',
  reading: {
    as: 'hole',
    mm: { lo: 26, hi: 28, value: null, unit: 'mm', digits: 0, sureness: 'practice' },
    offCentreMm: 0,
  },
  aboveBottomMm: 100,
  odMm: 22,
  depthMm: 200,
  toNearEndMm: 1200,
  endsTold: true,
  mayBeCut: true,
  what: '',
  hole: cutLimits(LIMITS, 'hole', 4000, 200),
  notch: cutLimits(LIMITS, 'notch', 4000, 200),
  shallowMm: 100,
  deepMm: 250,
  flangeMm: 47,
  offCentreShare: 0.1,
  ...change,
});

describe('bands of a joist', () => {
  test('are their own mirror image about mid span', () => {
    fc.assert(
      fc.property(span, depth, fc.constantFrom('hole' as const, 'notch' as const), (s, d, cut) => {
        const bands = bandsFromOneEnd(cutLimits(LIMITS, cut, s, d), s);
        const mirrored = bands.map(([from, to]) => [s - to, s - from]).reverse();
        for (const [i, band] of bands.entries()) {
          expect(band[0]).toBeCloseTo(mirrored[i]?.[0] ?? Number.NaN, 6);
          expect(band[1]).toBeCloseTo(mirrored[i]?.[1] ?? Number.NaN, 6);
        }
      }),
    );
  });

  test('a place is inside by its nearer end exactly where a band from one end holds it', () => {
    fc.assert(
      fc.property(span, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (s, share) => {
        const limits = cutLimits(LIMITS, 'hole', s, 200);
        const at = share * s;
        const held = bandsFromOneEnd(limits, s).some(([from, to]) => at >= from - 1e-6 && at <= to + 1e-6);
        expect(inBand(limits, Math.min(at, s - at))).toBe(held);
      }),
    );
  });

  test('notches end where holes begin, and deeper timber never bears less', () => {
    fc.assert(
      fc.property(span, depth, depth, (s, d, e) => {
        expect(cutLimits(LIMITS, 'notch', s, d).toMm).toBe(cutLimits(LIMITS, 'hole', s, d).fromMm);
        for (const cut of ['hole', 'notch'] as const) {
          const most = (mm: number) => cutLimits(LIMITS, cut, s, mm).mostMm?.lo ?? Number.NaN;
          expect(most(Math.max(d, e))).toBeGreaterThanOrEqual(most(Math.min(d, e)));
        }
      }),
    );
  });

  test('without span or depth nothing is told, and nothing passes', () => {
    const none = cutLimits(LIMITS, 'hole', null, null);
    expect([none.fromMm, none.toMm, none.mostMm]).toEqual([null, null, null]);
    expect(inBand(none, 1000)).toBeNull();
    expect(joistFaults(ask({ hole: none })).map((f) => f.outcome)).toEqual(['cantTell', 'cantTell']);
  });
});

describe('what a pipe does to a joist', () => {
  test('reads the same upside down: top for bottom, hole for hole', () => {
    fc.assert(
      fc.property(fc.integer({ min: -80, max: 380 }), depth, fc.constantFrom(10, 15, 22, 28, 54), (z, d, od) => {
        const [up, down] = [joistCut(z, d, od, judge), joistCut(d - z, d, od, judge)];
        const turned = { top: 'bottom', bottom: 'top', hole: 'hole', clear: 'clear' } as const;
        expect(down.as).toBe(turned[up.as]);
        expect(down.mm).toEqual(up.mm);
      }),
    );
  });

  test('over, in the top, through the middle, in the bottom, under', () => {
    const as = [230, 195, 100, 5, -20].map((z) => joistCut(z, 200, 22, judge).as);
    expect(as).toEqual(['clear', 'top', 'hole', 'bottom', 'clear']);
    expect(holeFor(22, judge)).toMatchObject({ lo: 26, hi: 28 });
  });

  test('no size, no figure: the place is still judged', () => {
    expect(joistCut(100, 200, null, judge)).toMatchObject({ as: 'hole', mm: null });
    const reading = joistCut(100, 200, null, judge);
    expect(joistFaults(ask({ reading, odMm: null, toNearEndMm: 2000 })).map((f) => f.kind)).toEqual([
      'holePlace',
      'notRead',
    ]);
  });
});

describe('faults', () => {
  test('a good hole has none', () => {
    expect(joistFaults(ask())).toEqual([]);
  });

  test('a limit inside the room taken round the pipe asks for a look', () => {
    const wide = (lo: number, hi: number) =>
      joistFaults(ask({ reading: { as: 'hole', mm: { ...holeFor(22, judge), lo, hi }, offCentreMm: 0 } }));
    expect(wide(48, 50)).toEqual([]);
    expect(wide(49, 51).map((f) => f.outcome)).toEqual(['check']);
    expect(wide(51, 53).map((f) => f.outcome)).toEqual(['stop']);
  });

  test('trusses never, whatever is said of cutting; webs of metal web joists always', () => {
    expect(joistFaults(ask({ kind: 'truss' })).map((f) => f.kind)).toEqual(['truss']);
    expect(joistFaults(ask({ kind: 'metalWeb', mayBeCut: false }))).toEqual([]);
    expect(joistFaults(ask({ kind: 'metalWeb', aboveBottomMm: 160 })).map((f) => f.kind)).toEqual(['flange']);
    expect(joistFaults(ask({ kind: 'engineered' })).map((f) => f.outcome)).toEqual(['cantTell']);
  });
});

describe('two cuts of one joist', () => {
  const cut = (as: 'hole' | 'notch') =>
    fc.record({
      as: fc.constant(as),
      alongMm: fc.integer({ min: 0, max: 4000 }),
      lo: fc.integer({ min: 14, max: 40 }),
      hi: fc.integer({ min: 41, max: 60 }),
    });

  test('it does not matter which is named first, and further apart is never worse', () => {
    const rank = (f: { outcome: string } | null): number =>
      ['stop', 'check'].indexOf(f?.outcome ?? '') + 3 * Number(!f);
    fc.assert(
      fc.property(cut('hole'), fc.oneof(cut('hole'), cut('notch')), fc.integer({ min: 0, max: 500 }), (a, b, more) => {
        expect(spacingFault(a, b, 3, 100)).toEqual(spacingFault(b, a, 3, 100));
        const away = { ...b, alongMm: b.alongMm + (b.alongMm >= a.alongMm ? more : -more) };
        expect(rank(spacingFault(a, away, 3, 100))).toBeGreaterThanOrEqual(rank(spacingFault(a, b, 3, 100)));
      }),
    );
  });
});
