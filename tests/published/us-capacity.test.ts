import { describe, expect, it } from 'vitest';
import copper from './data/metric-copper-125pa.json' with { type: 'json' };
import steel from './data/metric-steel-125pa.json' with { type: 'json' };
import spitzglass from './data/spitzglass-0-5in.json' with { type: 'json' };
import pe from './data/us-polyethylene-0-3in.json' with { type: 'json' };
import three from './data/us-steel-3in.json' with { type: 'json' };
import six from './data/us-steel-6in.json' with { type: 'json' };
import {
  CR_NATURAL,
  gravityFactor,
  lowPressureFlow,
  M_PER_FT,
  M3_PER_FT3,
  PA_PER_IN_WC,
  poleImperial,
  poleMetric,
  spitzglassFlow,
} from './formulas.ts';

/** One in the last printed place (three figures) at this size of number. */
const place = (n: number): number => 10 ** Math.max(0, Math.floor(Math.log10(n)) - 2);

describe('capacity tables of another country, by its own low-pressure equation', () => {
  it.each([three, six, pe])('$source: every cell within 1.2 %', (t) => {
    let count = 0;
    for (const [ft, ...flows] of t.rows) {
      for (const [i, printed] of flows.entries()) {
        const q = lowPressureFlow(t.boresIn[i] ?? Number.NaN, t.dropInWc, ft ?? Number.NaN);
        expect(Math.abs(q / printed - 1), `${ft} ft, ${t.boresIn[i]} in`).toBeLessThanOrEqual(0.012);
        count++;
      }
    }
    expect(count).toBe(t.rows.length * t.boresIn.length);
  });

  it.each([copper, steel])(
    '$source: every cell within its printed place (the page often rounds down) or 2.2 %',
    (t) => {
      for (const [m, ...kws] of t.rows) {
        for (const [i, printed] of kws.entries()) {
          const ft = ((m ?? Number.NaN) / M_PER_FT) * 1.5;
          const q = lowPressureFlow(t.boresIn[i] ?? Number.NaN, t.dropPa / PA_PER_IN_WC, ft) * M3_PER_FT3;
          const kw = (q * t.calorificMJPerM3) / 3.6;
          const off = Math.abs(kw - printed);
          expect(
            off <= Math.max(place(printed), 0.022 * printed),
            `${m} m, ${t.boresIn[i]} in: ${kw} against ${printed}`,
          ).toBe(true);
        }
      }
    },
  );

  it('its gravity factor follows from gravity 0.6, 60 degrees and 0.012 centipoise', () => {
    expect(gravityFactor(0.6, 520, 0.012)).toBeCloseTo(CR_NATURAL, 3);
  });
});

describe('Spitzglass', () => {
  it('gives all the printed steel cells within 0.9 % or their rounding, and the copper ones by rounding', () => {
    for (const [bore, ...flows] of spitzglass.rows) {
      for (const [i, printed] of flows.entries()) {
        const q = spitzglassFlow(bore ?? Number.NaN, spitzglass.dropInWc, spitzglass.lengthsFt[i] ?? Number.NaN, 0.6);
        expect(
          Math.abs(q - printed) <= Math.max(0.51, 0.009 * printed),
          `${bore} in, ${spitzglass.lengthsFt[i]} ft: ${q} against ${printed}`,
        ).toBe(true);
      }
    }
  });
});

describe('Pole', () => {
  it('metric and imperial are one formula within half a per cent', () => {
    const [boreIn, dropInWc, yards] = [1, 0.5, 20];
    const imperial = poleImperial(boreIn, dropInWc, yards, 0.6) * M3_PER_FT3;
    const metric = poleMetric(25.4, (dropInWc * PA_PER_IN_WC) / 100, yards * 3 * M_PER_FT, 0.6);
    expect(Math.abs(metric / imperial - 1)).toBeLessThan(0.005);
  });
});
