import { describe, expect, it } from 'vitest';
import { dose, litresByHeat, litresPerMetre, panelLitres, tubeLitres } from '../../src/engine/heating/content.ts';
import { tube } from '../../src/reference/tubes.ts';
import { exact } from '../../src/report/quantity.ts';

const metre = exact(1, 'm', 1);

describe('water in copper', () => {
  it.each([
    ['15', 0.145],
    ['22', 0.321],
    ['28', 0.54],
    ['35', 0.837],
    ['42', 1.234],
  ])('of %s a handbook of heating prints %s litres a metre (table 6.4)', (size, printed) => {
    const litres = tubeLitres('copper', size, metre)?.value ?? Number.NaN;
    expect(Math.abs(litres / printed - 1)).toBeLessThan(0.005);
  });

  it.each([
    ['8', 0.0363],
    ['10', 0.0608],
    ['12', 0.0916],
    ['15', 0.1453],
    ['22', 0.3205],
    ['28', 0.5391],
    ['35', 0.8347],
    ['42', 1.2316],
  ])('of %s its bore gives %s, worked out before', (size, before) => {
    expect(litresPerMetre(tube('copper', size)?.boreMm ?? Number.NaN)).toBeCloseTo(before, 4);
  });

  it('a size nobody read has no content', () => {
    expect(tubeLitres('copper', null, metre)).toBeNull();
  });
});

describe('what is usual', () => {
  it('panels of 600 hold 2.5 to 3 litres a metre, two of them 5 to 6; half the height half of it', () => {
    expect(panelLitres('single', 1000, 600)).toMatchObject({ lo: 2.5, hi: 3 });
    expect(panelLitres('double', 1000, 600)).toMatchObject({ lo: 5, hi: 6 });
    expect(panelLitres('double', 2000, 300)).toMatchObject({ lo: 5, hi: 6 });
    expect(panelLitres(null, 1000, 600)).toMatchObject({ lo: 2.5, hi: 6 });
  });

  it('a system of 10 kW holds 100 to 120 litres, of small content 60; one nobody saw lies between', () => {
    const kW = exact(10, 'kW', 1);
    expect(litresByHeat(kW, 'system')).toMatchObject({ lo: 100, hi: 120 });
    expect(litresByHeat(kW, 'low')).toMatchObject({ lo: 60, hi: 60 });
    expect(litresByHeat(kW, 'any')).toMatchObject({ lo: 60, hi: 120 });
  });

  it('one litre of inhibitor in a hundred', () => {
    expect(dose(exact(120, 'litres', 0)).value).toBeCloseTo(1.2, 9);
  });
});
