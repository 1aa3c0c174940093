import { describe, expect, it } from 'vitest';
import { frictionFactor } from '../../src/engine/hydraulics/friction.ts';
import { table } from '../../src/reference/tables.ts';
import { colebrook } from './colebrook.ts';

/** Reference table of friction factors after Colebrook (inflectionpointengineering.com, moody-friction-factor): Re by roughness over bore. */
const ROUGH = [1e-5, 5e-5, 1e-4, 2e-4, 5e-4, 1e-3] as const;
const PRINTED = [
  [4000, 0.039917, 0.039958, 0.040008, 0.04011, 0.040412, 0.04091],
  [10000, 0.030898, 0.03096, 0.031037, 0.03119, 0.031644, 0.032382],
  [40000, 0.022002, 0.022129, 0.022286, 0.022593, 0.023469, 0.024804],
  [100000, 0.018044, 0.018256, 0.018514, 0.019005, 0.020327, 0.022175],
  [1000000, 0.01187, 0.012649, 0.013441, 0.014683, 0.017207, 0.019943],
] as const;

/** Copper range, roughness 0.0015 mm, from a library of fluid mechanics: Re, bore, Colebrook, Churchill. */
const COPPER = [
  [4000, 13.6, 0.040019, 0.040717],
  [6000, 13.6, 0.035637, 0.036022],
  [10000, 13.6, 0.031053, 0.031196],
  [20000, 13.6, 0.026124, 0.02611],
  [40000, 20.2, 0.022205, 0.022129],
  [80000, 26.2, 0.019124, 0.019041],
] as const;

describe('friction factors', () => {
  it.each(PRINTED)('Re %s: the exact law is the printed one to half a digit', (re, ...printed) => {
    for (const [i, f] of printed.entries())
      expect(Math.abs(colebrook(re, ROUGH[i] ?? 0) - f)).toBeLessThanOrEqual(5.1e-7);
  });

  it.each(PRINTED)('Re %s: Churchill lies within 2.6 in a hundred of print', (re, ...printed) => {
    for (const [i, f] of printed.entries()) {
      const off = frictionFactor(re, ROUGH[i] ?? 0) / f - 1;
      expect(Math.abs(off), `${re}, ${ROUGH[i]}: ${off}`).toBeLessThanOrEqual(0.026);
    }
  });

  it('check point of a library of fluid mechanics: Re 1e5, roughness 1e-4 of the bore', () => {
    expect(colebrook(1e5, 1e-4)).toBeCloseTo(0.0185138661, 9);
    expect(frictionFactor(1e5, 1e-4)).toBeCloseTo(0.0184626246, 9);
  });

  it.each(COPPER)('copper at Re %s in a bore of %s', (re, bore, exact, churchill) => {
    expect(colebrook(re, 0.0015 / bore)).toBeCloseTo(exact, 6);
    expect(frictionFactor(re, 0.0015 / bore)).toBeCloseTo(churchill, 6);
  });

  it('the transition, where no law is sure: 0.035152 at Re 2,500 in 13.6', () => {
    expect(frictionFactor(2500, 0.0015 / 13.6)).toBeCloseTo(0.035152, 6);
  });

  it('the error told beside the law holds the exact one in the copper range', () => {
    const { methodErrorLo, methodErrorHi } = table('friction-churchill');
    for (let re = 4000; re <= 80000; re += 500) {
      for (const rough of [6e-5, 1.1e-4, 1.7e-4]) {
        const off = colebrook(re, rough) / frictionFactor(re, rough) - 1;
        expect(off, `${re}, ${rough}`).toBeGreaterThanOrEqual(methodErrorLo ?? 0);
        expect(off, `${re}, ${rough}`).toBeLessThanOrEqual(methodErrorHi ?? 0);
      }
    }
  });
});
