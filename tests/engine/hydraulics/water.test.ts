import { describe, expect, it } from 'vitest';
import { frictionFactor, regimeOf } from '../../../src/engine/hydraulics/friction.ts';
import { waterAt } from '../../../src/engine/hydraulics/water.ts';

describe('water', () => {
  it('is known from freezing to 110 degrees and nowhere else', () => {
    for (const tC of [0, 4, 60, 110]) expect(waterAt(tC)).not.toBeNull();
    for (const tC of [-0.01, 110.01, Number.NaN, Number.POSITIVE_INFINITY]) expect(waterAt(tC)).toBeNull();
  });

  it('is densest near 4 degrees and thins as it warms', () => {
    const at = (tC: number) => waterAt(tC) ?? { densityKgM3: 0, viscosityPaS: 0, cpKJPerKgK: 0 };
    expect(at(4).densityKgM3).toBeGreaterThan(at(2).densityKgM3);
    expect(at(4).densityKgM3).toBeGreaterThan(at(6).densityKgM3);
    for (let t = 5; t < 110; t += 1) {
      expect(at(t + 1).densityKgM3).toBeLessThan(at(t).densityKgM3);
      expect(at(t + 1).viscosityPaS).toBeLessThan(at(t).viscosityPaS);
    }
  });

  it('gives the same thing again after many other temperatures', () => {
    const before = waterAt(61.5);
    for (let i = 0; i < 300; i++) waterAt(i / 3);
    expect(waterAt(61.5)).toEqual(before);
  });
});

describe('friction factor', () => {
  it('is 64 over Re where flow is laminar', () => {
    for (const re of [1, 10, 100, 1000]) expect(frictionFactor(re, 1e-4) * re).toBeCloseTo(64, 2);
  });

  it('the loss never falls as the flow grows, through every regime', () => {
    for (const rough of [0, 1e-5, 1e-4, 1e-3, 1e-2]) {
      let before = 0;
      for (let re = 1; re < 1e6; re *= 1.01) {
        const loss = frictionFactor(re, rough) * re * re;
        expect(loss).toBeGreaterThan(before);
        before = loss;
      }
    }
  });

  it('names the regime', () => {
    expect([0, 2000, 2001, 3999, 4000, 1e5].map(regimeOf)).toEqual([
      'laminar',
      'laminar',
      'transitional',
      'transitional',
      'turbulent',
      'turbulent',
    ]);
  });
});
