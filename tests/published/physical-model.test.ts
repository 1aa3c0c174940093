import { describe, expect, it } from 'vitest';
import { frictionFactor } from '../../src/engine/gas/friction.ts';
import { sectionDrop } from '../../src/engine/gas/section-drop.ts';
import { constant } from '../../src/reference/figure.ts';
import { table } from '../../src/reference/tables.ts';
import { tube } from '../../src/reference/tubes.ts';
import { m3PerH, section } from '../engine/gas/ask.ts';
import textbook from './data/textbook-copper-flow.json' with { type: 'json' };
import usSteel from './data/us-steel-per-100ft.json' with { type: 'json' };
import { darcyFlow, M_PER_FT, M3_PER_FT3, PA_PER_IN_WC } from './formulas.ts';

const air = constant('gas-physical-model', 'smooth', 'airDensityKgPerM3');
const density = constant('gas-properties', 'natural', 'relativeDensity') * air;
const viscosity = constant('gas-properties', 'natural', 'viscosityPaS');
const copper = table('gas-discharge-copper');
const cells = copper.rows.flatMap((row) =>
  row.cells.map((c, i) => ({
    size: row.key,
    m: Number(copper.columns[i]?.key),
    q: typeof c === 'number' ? c : Number.NaN,
  })),
);

describe('smooth-tube sum against the published copper table', () => {
  const errors = cells.map(
    ({ size, m, q }) =>
      darcyFlow(tube('copper', size)?.boreMm ?? Number.NaN, 100 / m, density, viscosity, 'smooth') / q - 1,
  );

  it('meets all 40 cells in flow: at most 13 % worst, at most 5 % rms', () => {
    expect(errors).toHaveLength(40);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(0.13);
    expect(Math.sqrt(errors.reduce((s, e) => s + e * e, 0) / 40)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(errors.reduce((s, e) => s + e, 0) / 40)).toBeLessThanOrEqual(0.01);
  });

  it('with its stated error every cell of the table lies inside the interval', () => {
    for (const { size, m, q } of cells) {
      const { physical } = sectionDrop(section(size, m, 0, m3PerH(q)));
      expect(physical?.lo, `${size} ${m} m`).toBeLessThanOrEqual(1);
      expect(physical?.hi, `${size} ${m} m`).toBeGreaterThanOrEqual(1);
    }
  });

  it('the stated error is not looser than the worst cell by more than a few hundredths', () => {
    const ratios = cells.map(
      ({ size, m, q }) => 1 / (sectionDrop(section(size, m, 0, m3PerH(q))).physical?.value ?? Number.NaN) - 1,
    );
    const model = table('gas-physical-model');
    expect(Math.min(...ratios) - (model.methodErrorLo ?? 0)).toBeGreaterThanOrEqual(0);
    expect(Math.min(...ratios) - (model.methodErrorLo ?? 0)).toBeLessThan(0.03);
    expect((model.methodErrorHi ?? 0) - Math.max(...ratios)).toBeGreaterThanOrEqual(0);
    expect((model.methodErrorHi ?? 0) - Math.max(...ratios)).toBeLessThan(0.03);
  });
});

describe('propane by scaling the copper table', () => {
  // Same flow, same length: 1.0 mbar at relative density 0.6 would be 2.5 mbar at 1.5 if friction did not fall with Re.
  it('overstates the turbulent cells by a third to a half, so the engine does not do it', () => {
    for (const { size, m, q } of cells.filter((c) => c.size === '22x0.9' || c.size === '28x0.9')) {
      const propane = sectionDrop(section(size, m, 0, m3PerH(q), { gas: 'propane' }));
      expect(propane.table).toBeNull();
      const scaled = 2.5 / (propane.physical?.value ?? Number.NaN);
      expect(scaled, `${size} ${m} m`).toBeGreaterThan(1.3);
      expect(scaled, `${size} ${m} m`).toBeLessThan(1.55);
    }
  });
});

describe('friction factor', () => {
  it('is laminar below about 2000 where the laminar one is larger, Blasius above', () => {
    expect(frictionFactor(500, 'smooth', 20)).toBe(64 / 500);
    expect(frictionFactor(4000, 'smooth', 20)).toBeCloseTo(0.03974, 4);
    expect(frictionFactor(100_000, 'smooth', 20)).toBeCloseTo(0.01777, 4);
  });

  it('Colebrook: 0.0309 at Re 10 000 smooth, and it solves its own equation', () => {
    for (const re of [3000, 10_000, 60_000]) {
      const f = frictionFactor(re, 'rough', 21.7);
      const right = -2 * Math.log10(0.046 / 21.7 / 3.7 + 2.51 / (re * Math.sqrt(f)));
      expect(1 / Math.sqrt(f)).toBeCloseTo(right, 9);
      expect(f).toBeGreaterThan(frictionFactor(re, 'smooth', 21.7));
    }
  });
});

describe('textbook table of natural gas in copper (relative density 0.58, 1.1e-5 Pa s)', () => {
  // "32 mm" of that table behaves as the 35 mm tube, bore 32.6.
  const errors = textbook.rows.flatMap(([paPerM, ...flows]) =>
    flows.map((q, i) => ({
      bore: textbook.boresMm[i] ?? Number.NaN,
      error:
        darcyFlow(
          textbook.boresMm[i] ?? Number.NaN,
          paPerM ?? Number.NaN,
          textbook.relativeDensity * air,
          textbook.viscosityPaS,
          'smooth',
        ) /
          3.6 /
          q -
        1,
    })),
  );

  it('is met within 8.5 % in flow, rms under 5 %', () => {
    expect(errors).toHaveLength(12);
    for (const { error, bore } of errors) expect(Math.abs(error), `bore ${bore}`).toBeLessThanOrEqual(0.085);
    expect(Math.sqrt(errors.reduce((s, { error: e }) => s + e * e, 0) / errors.length)).toBeLessThan(0.05);
  });
});

describe('rough tube against the code table of another country', () => {
  it('Schedule 40 steel, 0.5 in w.c. per 100 ft: the flows worked out before, and within 11 % of print', () => {
    const before = [45, 99, 192, 407, 619, 1220];
    const [, ...printed] = usSteel.rows[0] ?? [];
    for (const [i, boreIn] of usSteel.boresIn.entries()) {
      const q =
        darcyFlow(boreIn * 25.4, (usSteel.dropInWc * PA_PER_IN_WC) / (100 * M_PER_FT), density, viscosity, 'rough') /
        M3_PER_FT3;
      expect(Math.abs(q / (before[i] ?? Number.NaN) - 1)).toBeLessThan(0.015);
      expect(Math.abs(q / (printed[i] ?? Number.NaN) - 1)).toBeLessThan(0.11);
    }
  });
});
