import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sums } from '../../../src/engine/evaluate.ts';
import { bendArc, bendGain, bendLength, bendSetback } from '../../../src/engine/materials/bend-length.ts';
import { expansion } from '../../../src/engine/materials/expansion.ts';

const radius = fc.double({ min: 10, max: 500, noNaN: true });
const angle = fc.double({ min: 1, max: 170, noNaN: true });
const ask = { kind: 'copper', size: '15', deg: 90, radiusMm: null, legsMm: null, editions: {} } as const;
const cutOf = (a: number, b: number, deg: number, radiusMm: number): number | undefined =>
  bendLength({ ...ask, deg, radiusMm, legsMm: [a, b] }).steps.find((s) => s.label === 'Length to cut')?.result?.value ??
  undefined;

describe('a bend', () => {
  it('conserves tube: the straights that are left and the arc are the length to cut', () => {
    fc.assert(
      fc.property(radius, angle, fc.double({ min: 0, max: 900, noNaN: true }), (r, deg, more) => {
        const setback = bendSetback(r, deg);
        const [a, b] = [setback + more, setback + 100];
        expect(cutOf(a, b, deg, r)).toBeCloseTo(a - setback + bendArc(r, deg) + (b - setback), 4);
      }),
    );
  });

  it('saves the same from either end, less than both setbacks and never nothing', () => {
    fc.assert(
      fc.property(radius, angle, (r, deg) => {
        const setback = bendSetback(r, deg);
        expect(bendGain(r, deg)).toBeGreaterThan(0);
        expect(bendGain(r, deg)).toBeLessThan(2 * setback);
        expect(bendGain(2 * r, deg)).toBeCloseTo(2 * bendGain(r, deg), 6);
        expect(cutOf(setback + 70, setback + 300, deg, r)).toBeCloseTo(
          cutOf(setback + 300, setback + 70, deg, r) ?? 0,
          6,
        );
      }),
    );
  });

  it('cannot be told for no angle, a half turn, a size without a former, or legs too short', () => {
    for (const deg of [0, -90, 180, 270, Number.NaN]) expect(bendLength({ ...ask, deg }).result).toBeNull();
    expect(bendLength({ ...ask, size: '35' }).missing).toEqual(['the radius of the former for copper 35']);
    expect(bendLength({ ...ask, kind: 'plastic' }).missing).toEqual(['the radius of the former for plastic 15']);
    expect(bendLength({ ...ask, radiusMm: 0 }).result).toBeNull();
    expect(bendLength({ ...ask, editions: { 'bend-radius': 'bend-radius-none' } }).result).toBeNull();
    expect(bendLength({ ...ask, legsMm: [52, 400] }).result).toBeNull();
    expect(bendLength({ ...ask, legsMm: [53, 400] }).missing).toEqual([]);
  });

  it('a measured former goes before the table; one leg without the other is asked for', () => {
    expect(bendLength({ ...ask, radiusMm: 57 }).result?.value).toBeCloseTo((57 * Math.PI) / 2, 9);
    expect(sums.get('bend')?.work({ size: '15', degrees: 90, a: 400 }).result).toBeNull();
  });
});

describe('growth by heat', () => {
  it('goes with length and rise, and back again when it cools', () => {
    const grow = (lengthM: number, riseK: number) =>
      expansion({ material: 'pex', lengthM, riseK, mmPerMK: null }).result;
    fc.assert(
      fc.property(fc.nat(100), fc.nat(80), (m, k) => {
        expect(grow(2 * m, k)?.hi).toBeCloseTo(2 * (grow(m, k)?.hi ?? Number.NaN), 6);
        expect(grow(m, -k)?.lo).toBeCloseTo(-(grow(m, k)?.hi ?? Number.NaN), 6);
      }),
    );
  });

  it('cannot be told of a material nobody read, a length below nothing, or no rise', () => {
    const one = { material: 'copper', lengthM: 1, riseK: 1, mmPerMK: null };
    expect(expansion({ ...one, material: 'lead' }).result).toBeNull();
    expect(expansion({ ...one, lengthM: -1 }).missing).toEqual(['a length']);
    expect(expansion({ ...one, riseK: Number.NaN }).result).toBeNull();
    expect(expansion({ ...one, mmPerMK: Number.NaN }).result).toBeNull();
  });
});
