import { describe, expect, it } from 'vitest';
import { sums } from '../../src/engine/evaluate.ts';
import { designFlow, drawOffsOf, loadingUnits } from '../../src/engine/water/loading-units.ts';
import { constant, figure } from '../../src/reference/figure.ts';
import { exact } from '../../src/report/quantity.ts';

const BS = 'BS 6700';
const EN = 'EN 806-3';
/** Draw-off, how many in one flat, and the units that the article prints for them all. */
const FLAT = [
  ['bath-tap', 2, 20],
  ['basin', 2, 3],
  ['wc', 2, 4],
  ['shower', 2, 6],
  ['sink', 2, 6],
  ['washing-machine', 2, 6],
  ['spray-tap', 1, 0],
] as const;
const flats = (n: number) => FLAT.map(([draw, count]) => ({ scale: BS, draw, count: count * n }));

describe('article in two parts on a block of flats: loading units on the BS 6700 scale', () => {
  it('each line, one flat of 45, two such flats 90', () => {
    for (const [draw, count, units] of FLAT) {
      expect(loadingUnits([{ scale: BS, draw, count }]).result?.value, draw).toBe(units);
    }
    expect(loadingUnits(flats(1)).result?.value).toBe(45);
    expect(loadingUnits(flats(2)).result?.value).toBe(90);
    expect(loadingUnits([...flats(1), ...flats(1)]).result?.value).toBe(90);
  });

  it('the spray tap has no units: its steady flow is told beside them', () => {
    expect(loadingUnits(flats(1)).assumed.join()).toContain('0.04 to 0.05 l/s');
  });

  it('the sum in the terminal says the same, and has no flow for 45: the graph was read to 13.5 only', () => {
    const sum = sums.get('loading-units');
    const working = sum?.work({ ...sum.example.values });
    expect(working?.result?.value).toBe(45);
    expect(working?.assumed.join()).toContain('10 to 13.5');
  });
});

describe('BS 6700, machine-read page', () => {
  it('three quarters of a sink is 5, a dishwasher 3; one inch of bath is 22 from memory, where the page shows 2', () => {
    expect(constant('loading-units-bs-6700', 'sink-tap-3-4')).toBe(5);
    expect(constant('loading-units-bs-6700', 'dishwasher')).toBe(3);
    expect(figure('loading-units-bs-6700', 'bath-tap-1')).toMatchObject({ value: 22, sureness: 'memory' });
    expect(figure('loading-units-bs-6700', 'bath-tap-1')).toMatchObject({ note: expect.stringContaining('shows 2') });
  });

  it('outside a home a basin tap is 1.5 to 3; a bidet was not read', () => {
    expect(loadingUnits([{ scale: BS, draw: 'basin-elsewhere', count: 2 }]).result).toMatchObject({ lo: 3, hi: 6 });
    expect(loadingUnits([{ scale: BS, draw: 'bidet', count: 1 }])).toMatchObject({ result: null });
  });

  it('flow of units, points the worked example of the 2006 edition shows', () => {
    for (const [units, flow] of [
      [10, 0.3],
      [11.5, 0.32],
      [13.5, 0.35],
    ] as const) {
      expect(designFlow(BS, exact(units, 'units', 1)).result?.value).toBeCloseTo(flow, 9);
    }
    for (const units of [9.9, 13.6, 45]) expect(designFlow(BS, exact(units, 'units', 1)).result).toBeNull();
  });
});

describe('EN 806-3:2006, Table 2, typed a second time', () => {
  // Draw-off: units, draw-off flow, least flow.
  const again: Readonly<Record<string, readonly [number, number, number]>> = {
    basin: [1, 0.1, 0.1],
    bidet: [1, 0.1, 0.1],
    wc: [1, 0.1, 0.1],
    sink: [2, 0.2, 0.15],
    'washing-machine': [2, 0.2, 0.15],
    dishwasher: [2, 0.2, 0.15],
    shower: [2, 0.2, 0.15],
    'urinal-valve': [3, 0.3, 0.15],
    bath: [4, 0.4, 0.3],
    'outside-tap': [5, 0.5, 0.4],
    'large-sink': [8, 0.8, 0.8],
    'flush-valve': [15, 1.5, 1.0],
  };

  it('every row and no other, and a unit is a tenth of a litre a second in each', () => {
    expect([...drawOffsOf(EN)].sort()).toEqual(Object.keys(again).sort());
    for (const [draw, row] of Object.entries(again)) {
      expect(['units', 'flow', 'least'].map((c) => constant('loading-units-en-806-3', draw, c))).toEqual(row);
      expect(loadingUnits([{ scale: EN, draw, count: 3 }]).result?.value).toBe(row[0] * 3);
      expect(row[0] / 10).toBeCloseTo(row[1], 9);
    }
  });

  it('velocities: 2.0 in mains, 4.0 in the branch of one fitting; BS 6700 has 3.0', () => {
    expect(constant('water-velocity', EN, 'pipe')).toBe(2);
    expect(constant('water-velocity', EN, 'branch')).toBe(4);
    expect(constant('water-velocity', BS, 'pipe')).toBe(3);
  });
});

describe('the two scales', () => {
  it('are never mixed: a bath of 4 and a bath tap of 10 have no sum', () => {
    const mixed = loadingUnits([
      { scale: EN, draw: 'bath', count: 1 },
      { scale: BS, draw: 'bath-tap', count: 1 },
    ]);
    expect(mixed.result).toBeNull();
    expect(mixed.missing).toEqual(['one scale: units of BS 6700 and of EN 806-3 are never added']);
  });

  it('lend each other neither draw-offs nor the graph of flow', () => {
    expect(loadingUnits([{ scale: EN, draw: 'bath-tap', count: 1 }]).result).toBeNull();
    expect(loadingUnits([{ scale: BS, draw: 'bath', count: 1 }]).result).toBeNull();
    expect(designFlow(EN, exact(10, 'units', 1)).result).toBeNull();
  });
});
