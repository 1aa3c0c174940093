import { describe, expect, it } from 'vitest';
import { acceptance, growth, pressures, vesselByForm, vesselByTable } from '../../src/engine/heating/vessel.ts';
import { waterAt } from '../../src/engine/hydraulics/water.ts';
import { exact } from '../../src/report/quantity.ts';

const grows = (cold: number, hot: number): number => growth(cold, hot) ?? Number.NaN;

describe('how much water grows', () => {
  it.each([
    [30, 0.407],
    [40, 0.754],
    [50, 1.181],
    [55, 1.421],
    [60, 1.679],
    [65, 1.953],
    [70, 2.244],
    [75, 2.55],
    [80, 2.872],
    [82, 3.005],
    [85, 3.21],
    [90, 3.563],
  ])('from 10 to %s degrees %s in a hundred, by the density of the formulation for general use', (hot, percent) => {
    expect(grows(10, hot) * 100).toBeCloseTo(percent, 3);
  });

  it.each([
    [40, 0.782],
    [60, 1.707],
    [70, 2.272],
    [80, 2.9],
    [90, 3.591],
  ])('from 4 to %s degrees %s in a hundred', (hot, percent) => {
    expect(grows(4, hot) * 100).toBeCloseTo(percent, 3);
  });

  it('a printed exercise: 200 kg from 10 to 90 degrees, 200.2 to 207.2 litres, 7.0 of growth', () => {
    const litres = (tC: number): number => (200 / (waterAt(tC)?.densityKgM3 ?? Number.NaN)) * 1000;
    expect(Math.abs(litres(10) / 200.2 - 1)).toBeLessThan(0.001);
    expect(Math.abs(litres(90) / 207.2 - 1)).toBeLessThan(0.001);
    expect(Math.abs(litres(90) - litres(10) - 7)).toBeLessThan(0.15);
    expect(litres(10) * grows(10, 90)).toBeCloseTo(litres(90) - litres(10), 6);
  });

  it('is not told outside what the water is known for', () => {
    expect(growth(10, 400)).toBeNull();
  });
});

describe('the vessel', () => {
  it('a printed worksheet: 924 gallons, 80 to 95 F, 30 to 100 psi, net factor 0.00225: 2.079, 0.61, 3.41 gallons', () => {
    const psi = (gauge: number): number => gauge + 14.7;
    const expansion = 924 * 0.00225;
    expect(expansion).toBeCloseTo(2.079, 3);
    expect(acceptance(psi(30), psi(100))).toBeCloseTo(0.61, 2);
    expect(expansion / acceptance(psi(30), psi(100))).toBeCloseTo(3.41, 2);
    // The factor is net of what steel pipe stretches: water alone grows more, 0.00259.
    const celsius = (f: number): number => ((f - 32) * 5) / 9;
    expect(grows(celsius(80), celsius(95))).toBeCloseTo(0.00259, 5);
  });

  it('by the form, written out a second time: growth, reserve, and pressures over one another', () => {
    // 500 litres growing 2.872 in a hundred, charge 1.0, end 2.5: (14.36 + 3) x 3.5 / 1.5.
    expect(vesselByForm(500, 0.02872, 1, 2.5)).toBeCloseTo(((14.36 + 3) * 3.5) / 1.5, 6);
    // Above 600 litres the reserve is half a litre in a hundred.
    expect(vesselByForm(1000, 0.02872, 1, 2.5)).toBeCloseTo(((28.72 + 5) * 3.5) / 1.5, 6);
    // A small one keeps a fifth of itself: V = (1.436 + 0.2 V) x 3.5 / 1.8.
    const small = vesselByForm(50, 0.02872, 0.7, 2.5) ?? Number.NaN;
    expect(small).toBeCloseTo(((1.436 + 0.2 * small) * 3.5) / 1.8, 6);
    expect(vesselByForm(50, 0.02872, 2.5, 2.5)).toBeNull();
  });

  it('two ways of keeping a reserve meet where they change over', () => {
    // Fifteen litres keep three either way, so there is no step.
    const at = (content: number): number => vesselByForm(content, 0.02872, 0.7, 2.5) ?? Number.NaN;
    const turn = (15 / (3.5 / 1.8) - 3) / 0.02872;
    expect(at(turn - 0.01)).toBeCloseTo(15, 1);
    expect(at(turn + 0.01)).toBeCloseTo(15, 1);
  });

  it('charge and end: 0.3 over the height, 0.7 at the least; half a bar below the valve', () => {
    const at = (m: number) => pressures(exact(m, 'm', 1), null);
    expect(at(2).chargeBar.value).toBeCloseTo(0.7, 6);
    expect(at(8).chargeBar.value).toBeCloseTo(8 * 0.098 + 0.3, 6);
    expect(at(8).endBar.value).toBe(2.5);
    expect(pressures(exact(8, 'm', 1), exact(4, 'bar', 1)).endBar.value).toBe(3.5);
    // A house of two storeys is filled to 1.0 to 1.5 bar.
    expect(at(5).fillBar.lo).toBeGreaterThanOrEqual(0.9);
    expect(at(5).fillBar.hi).toBeLessThanOrEqual(1.5);
  });
});

describe('the older table, valve of 3 bar', () => {
  it.each([
    [0.5, 0.0833],
    [1, 0.109],
    [1.5, 0.156],
  ])('at %s bar %s of the content; that is growth of 4.9 in a hundred up to 2.65 bar', (bar, factor) => {
    const read = vesselByTable(exact(100, 'litres', 0), exact(bar, 'bar', 2));
    expect(read?.value).toBeCloseTo(100 * factor, 6);
    expect(0.049 / acceptance(bar + 1.013, 2.65 + 1.013)).toBeCloseTo(factor, 3);
    // With water of 80 degrees the same pressures ask for far less.
    expect(0.0287 / acceptance(bar + 1.013, 2.65 + 1.013)).toBeLessThan(0.6 * factor);
  });

  it('reads the next row between two, and nothing past the last', () => {
    expect(vesselByTable(exact(100, 'litres', 0), exact(0.7, 'bar', 2))?.value).toBeCloseTo(10.9, 6);
    expect(vesselByTable(exact(100, 'litres', 0), exact(1.6, 'bar', 2))).toBeNull();
  });
});
