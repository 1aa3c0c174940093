import { describe, expect, it } from 'vitest';
import { roughnessOf, tubeLoss } from '../../src/engine/hydraulics/tube-loss.ts';
import { waterAt } from '../../src/engine/hydraulics/water.ts';
import { tube } from '../../src/reference/tubes.ts';
import { colebrook } from './colebrook.ts';

/** Building services engineering textbook, 5th edition, p. 100 table 4.3: Pa/m, then kg/s in 15, 22, 28, 35, 42. */
const PRINTED = [
  [200, 0.065, 0.174, 0.381, 0.656, 1.06],
  [260, 0.075, 0.202, 0.441, 0.76, 1.23],
  [300, 0.081, 0.219, 0.478, 0.823, 1.33],
  [360, 0.09, 0.242, 0.529, 0.91, 1.47],
  [400, 0.096, 0.257, 0.561, 0.965, 1.56],
  [460, 0.104, 0.278, 0.607, 1.04, 1.68],
  [500, 0.109, 0.291, 0.635, 1.09, 1.76],
  [560, 0.116, 0.31, 0.677, 1.16, 1.88],
  [600, 0.12, 0.323, 0.703, 1.21, 1.95],
  [660, 0.127, 0.34, 0.741, 1.27, 2.05],
  [700, 0.131, 0.352, 0.766, 1.32, 2.12],
  [760, 0.138, 0.368, 0.802, 1.38, 2.22],
  [800, 0.142, 0.379, 0.825, 1.42, 2.28],
] as const;
/** The page names no temperature; this is the one its figures fit, and the one a second handbook prints on its chart of copper. */
const TC = 75;

const boreOf = (size: string): number => tube('copper', size)?.boreMm ?? Number.NaN;
const ROUGHNESS = roughnessOf('copper')?.value ?? Number.NaN;
const paPerM = (flowKgPerS: number, boreMm: number, tC = TC): number =>
  tubeLoss({ flowKgPerS, boreMm, roughnessMm: ROUGHNESS, tC })?.paPerM ?? Number.NaN;

/** kg/s at which a metre loses so much. */
function flowAt(pa: number, boreMm: number, tC = TC): number {
  let [lo, hi] = [0, 50];
  for (let turn = 0; turn < 80; turn++) {
    const middle = (lo + hi) / 2;
    if (paPerM(middle, boreMm, tC) < pa) lo = middle;
    else hi = middle;
  }
  return lo;
}

describe('pipe-sizing table of a textbook', () => {
  it.each(PRINTED)(
    '%s Pa/m: 15, 28 and 35 carry what is printed within 3 in a hundred',
    (pa, in15, _22, in28, in35) => {
      for (const [size, printed] of [
        ['15', in15],
        ['28', in28],
        ['35', in35],
      ] as const) {
        expect(Math.abs(flowAt(pa, boreOf(size)) / printed - 1), size).toBeLessThanOrEqual(0.03);
      }
    },
  );

  it.each(PRINTED)(
    '%s Pa/m: 22 and 42 are of an older, thicker tube and are not to be met',
    (pa, _15, in22, _28, _35, in42) => {
      // Solved back, every cell of the two columns gives a bore of 19.7 and 38.7: half a millimetre and more under thin-wall tube.
      for (const [size, printed, bore] of [
        ['22', in22, 19.73],
        ['42', in42, 38.67],
      ] as const) {
        expect(printed / flowAt(pa, boreOf(size)), size).toBeLessThan(0.965);
        expect(Math.abs(flowAt(pa, bore) / printed - 1), size).toBeLessThanOrEqual(0.012);
      }
    },
  );
});

describe('flow in thin-wall copper, worked out before with the same laws', () => {
  it.each([
    [8.8, 100, 0.0129, 0.22],
    [13.6, 300, 0.0801, 0.57],
    [20.2, 300, 0.2335, 0.75],
    [26.2, 200, 0.3745, 0.71],
    [32.6, 400, 0.9902, 1.22],
  ])('bore %s at %s Pa/m', (bore, pa, flow, speed) => {
    const got = flowAt(pa, bore);
    expect(Math.abs(got / flow - 1)).toBeLessThan(0.004);
    const loss = tubeLoss({ flowKgPerS: got, boreMm: bore, roughnessMm: ROUGHNESS, tC: TC });
    expect(loss?.velocityMPerS).toBeCloseTo(speed, 1);
  });

  it('at 45 degrees 300 Pa/m passes about a twentieth less', () => {
    for (const [bore, flow] of [
      [13.6, 0.0757],
      [20.2, 0.2219],
      [26.2, 0.4482],
    ] as const) {
      expect(Math.abs(flowAt(300, bore, 45) / flow - 1)).toBeLessThan(0.002);
    }
  });
});

describe('single pipe of a package for teaching hydraulics (rdrr.io/cran/hydraulics)', () => {
  // 20 in, 10,560 ft, 4 ft3/s, 60 degrees Fahrenheit, roughness 0.0005 ft: printed Re 248,625, f 0.0173, 5.72 ft.
  const ft = 0.3048;
  const tC = (60 - 32) / 1.8;
  const bore = (20 / 12) * ft;
  const rough = 0.0005 * ft;
  const flow = 4 * ft ** 3;
  const density = waterAt(tC)?.densityKgM3 ?? Number.NaN;
  const loss = tubeLoss({ flowKgPerS: flow * density, boreMm: bore * 1000, roughnessMm: rough * 1000, tC });

  it('Reynolds number: 252,991 with water as it is, within 2 in a hundred of print', () => {
    expect(Math.abs((loss?.re ?? 0) / 252991 - 1)).toBeLessThan(1e-4);
    expect(Math.abs((loss?.re ?? 0) / 248625 - 1)).toBeLessThan(0.02);
  });

  it('factor and loss as printed', () => {
    const exact = colebrook(loss?.re ?? 0, rough / bore);
    expect(exact).toBeCloseTo(0.017265, 6);
    expect(Math.abs((loss?.f ?? 0) / 0.0173 - 1)).toBeLessThan(0.01);
    const feet = ((loss?.paPerM ?? 0) * 10560) / (density * 9.80665);
    expect(Math.abs(feet / 5.72 - 1)).toBeLessThan(0.01);
    expect(Math.abs((feet * exact) / (loss?.f ?? 0) / 5.715 - 1)).toBeLessThan(2e-4);
  });
});
