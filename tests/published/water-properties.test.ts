import { describe, expect, it } from 'vitest';
import { type Water, waterAt } from '../../src/engine/hydraulics/water.ts';

function water(tC: number): Water {
  const found = waterAt(tC);
  if (!found) throw new Error(`no water at ${tC}`);
  return found;
}
const apart = (got: number, printed: number): number => Math.abs(got / printed - 1);

/** Chemical engineers' handbook, 9th edition, table 2-135, saturated water: K, mol/dm3, kJ/mol K, uPa s. */
const SATURATED = [
  [280, 55.501, 0.075688, 1433.7],
  [290, 55.44, 0.075429, 1084.0],
  [300, 55.317, 0.07532, 853.84],
  [310, 55.139, 0.075294, 693.54],
  [320, 54.919, 0.075317, 577.02],
  [330, 54.662, 0.075373, 489.49],
  [340, 54.371, 0.075456, 421.97],
  [350, 54.049, 0.075567, 368.77],
  [360, 53.698, 0.075708, 326.1],
  [370, 53.321, 0.075883, 291.36],
] as const;
/** g/mol. */
const MOLAR = 18.015268;

/** IAPWS-95 with the viscosity release of 2008 at 0.1 MPa, from a library of water properties: degrees, kg/m3, uPa s, kJ/kgK, mm2/s. */
const FULL = [
  [10, 999.702, 1305.9, 4.1952, 1.30629],
  [20, 998.207, 1001.6, 4.1841, 1.0034],
  [30, 995.649, 797.22, 4.1798, 0.8007],
  [40, 992.216, 652.73, 4.1794, 0.65785],
  [50, 988.034, 546.52, 4.1813, 0.55314],
  [55, 985.693, 503.62, 4.183, 0.51093],
  [60, 983.195, 466.04, 4.185, 0.474],
  [65, 980.55, 432.9, 4.1873, 0.44149],
  [70, 977.764, 403.55, 4.1901, 0.41273],
  [75, 974.842, 377.42, 4.1932, 0.38715],
  [80, 971.79, 354.05, 4.1968, 0.36433],
  [85, 968.611, 333.08, 4.2007, 0.34387],
  [90, 965.309, 314.18, 4.2052, 0.32547],
] as const;

describe('properties of water', () => {
  it.each(SATURATED)('saturation line at %s K, as the handbook prints it', (kelvin, molPerL, kJPerMolK, uPaS) => {
    const w = water(kelvin - 273.15);
    expect(apart(w.densityKgM3, molPerL * MOLAR)).toBeLessThan(5e-5);
    expect(apart(w.cpKJPerKgK, (kJPerMolK / MOLAR) * 1000)).toBeLessThan(5e-4);
    // The handbook's viscosity is of the formulation before the one of 2008: up to 0.09 in a hundred higher.
    expect(apart(w.viscosityPaS * 1e6, uPaS)).toBeLessThan(9e-4);
  });

  it.each(FULL)('the full formulation at %s degrees', (tC, density, uPaS, cp, mm2PerS) => {
    const w = water(tC);
    expect(apart(w.densityKgM3, density)).toBeLessThan(2e-5);
    expect(apart(w.viscosityPaS * 1e6, uPaS)).toBeLessThan(5e-5);
    expect(apart(w.cpKJPerKgK, cp)).toBeLessThan(5e-4);
    expect(apart((w.viscosityPaS / w.densityKgM3) * 1e6, mm2PerS)).toBeLessThan(6e-5);
  });

  it('check value of the viscosity release SR6-08: 889.997 uPa s at 298.15 K', () => {
    expect(water(25).viscosityPaS * 1e6).toBeCloseTo(889.997, 2);
  });

  it('heat of heating water: 1 kW is 0.01193 kg/s at 20 K, as a textbook takes it with 4.19', () => {
    expect(1 / (water(70).cpKJPerKgK * 20)).toBeCloseTo(0.01193, 5);
  });
});
