import { describe, expect, it } from 'vitest';
import { blendC, hotShare } from '../../src/engine/preheat/blend.ts';
import { kwAt } from '../../src/engine/preheat/heat-added.ts';
import { growthPercent } from '../../src/engine/supply/expansion.ts';

describe('published figures of blending and heating water', () => {
  // Forum answer on mixing liquids (physicsforums.com/threads/formula-for-mixing-liquids-of-different-temperatures.246707).
  it('3500 litres at 40 °C from 100 and 10 °C take about 1166 litres of the hot', () => {
    const hot = (hotShare(40, 100, 10) ?? Number.NaN) * 3500;
    expect(hot).toBeGreaterThan(1165.5);
    expect(hot).toBeLessThan(1167);
    expect(blendC(1166 / 3500, 100, 10)).toBeCloseTo(40, 1);
  });

  // The usual rule as installers write it: 9 litres a minute from 10 to 60 °C, heat of water 4.2 kJ/kgK.
  it('9 litres a minute from 10 to 60 °C take 31.5 kW', () => {
    expect(Math.abs((kwAt(9, 10, 60) ?? Number.NaN) - 31.5)).toBeLessThan(0.3);
  });

  // Litres a minute at a rise of 35 K, 60 kW / (4.19 x 35): 24 kW 9.82, 30 kW 12.27, 35 kW 14.32.
  it.each([
    [24, 9.82],
    [30, 12.27],
    [35, 14.32],
  ])('%f kW heat %f litres a minute by 35 K', (kw, lPerMin) => {
    const found = kwAt(lPerMin, 10, 45) ?? Number.NaN;
    expect(Math.abs(found / kw - 1)).toBeLessThan(0.004);
  });

  // Densities of the formulation for liquid water of the international association for its properties (SR6-08), from 10 °C.
  it.each([
    [30, 0.407],
    [40, 0.754],
    [50, 1.181],
    [60, 1.679],
    [70, 2.244],
    [80, 2.872],
    [90, 3.563],
  ])('water grows from 10 to %f °C by %f percent', (toC, percent) => {
    expect(growthPercent(10, toC)?.value).toBeCloseTo(percent, 2);
  });

  // Expansion worksheet (rostudy.me/tema/5001143): 200 kg of water from 10 to 90 °C, 200.2 to 207.2 litres.
  it('200 kg grow by about 7 litres from 10 to 90 °C', () => {
    const litres = (200.06 * (growthPercent(10, 90)?.lo ?? Number.NaN)) / 100;
    expect(Math.abs(litres - 7)).toBeLessThan(0.2);
  });
});
