import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { serviceLook, themes } from '../../src/drawing/look/tokens.ts';
import { fitBeat } from '../../src/drawing/paint/beat.ts';

const STYLES = Object.keys(themes.day.service);
const sum = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0);

/** How much ink lies before `s` up to the next gap, walking the pattern from where a line starts. */
function inkFrom(dash: readonly number[], at: number): number {
  let left = at % sum(dash);
  for (const [i, d] of dash.entries()) {
    if (left < d) return i % 2 === 0 ? d - left : 0;
    left -= d;
  }
  return 0;
}

describe('a beat fitted to a leg', () => {
  test('gas is unbroken', () => {
    expect(fitBeat(100, serviceLook('gas').dashMm)).toBeUndefined();
  });

  test('both ends get half of the first dash, whatever the length', () => {
    const broken = STYLES.filter((s) => serviceLook(s).dashMm.length > 0);
    fc.assert(
      fc.property(fc.constantFrom(...broken), fc.double({ min: 0.1, max: 400, noNaN: true }), (style, length) => {
        const { dashMm } = serviceLook(style);
        const beat = fitBeat(length, dashMm);
        if (length < 0.75 * sum(dashMm)) {
          expect(beat).toBeUndefined();
          return;
        }
        if (!beat) throw new Error('a long leg shows its beat');
        const half = (beat.dash[0] as number) / 2;
        expect(inkFrom(beat.dash, beat.at)).toBeCloseTo(half, 6);
        // The end lies half way through a first dash again: whole periods fit.
        const periods = length / sum(beat.dash);
        expect(periods).toBeCloseTo(Math.round(periods), 6);
      }),
    );
  });

  test('a beat is never stretched past half as much again, nor squeezed under three quarters', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 400, noNaN: true }), (length) => {
        const dash = serviceLook('heatingFlow').dashMm;
        const beat = fitBeat(length, dash);
        const ratio = beat ? sum(beat.dash) / sum(dash) : 1;
        expect(ratio).toBeGreaterThan(0.66);
        expect(ratio).toBeLessThan(1.51);
      }),
    );
  });
});
