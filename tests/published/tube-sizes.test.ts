import { describe, expect, it } from 'vitest';
import { tube } from '../../src/reference/tubes.ts';
import { same, span } from './span.ts';

/** Outside and wall, mm. Half-hard thin tube of EN 1057; the medium series of EN 10255; waste pipe as sold. */
const WALLED = {
  copper: {
    '8x0.6': 8,
    '10x0.6': 10,
    '12x0.6': 12,
    '15x0.7': 15,
    '22x0.9': 22,
    '28x0.9': 28,
    '35x1.2': 35,
    '35x1.0': 35,
  },
  copperLarge: { '42x1.2': 42, '54x1.2': 54 },
} as const;
const STEEL = [
  ['15', 21.3, 2.6],
  ['20', 26.9, 2.6],
  ['25', 33.7, 3.2],
  ['32', 42.4, 3.2],
  ['40', 48.3, 3.2],
  ['50', 60.3, 3.6],
] as const;
const WASTE = [
  ['21.5', 21.5, 1.2],
  ['32', 36.3, 1.9],
  ['40', 42.9, 2.0],
] as const;

function expectTube(kind: string, size: string, od: number, wall: number): void {
  const found = tube(kind, size);
  expect(found?.odMm, `${kind} ${size}`).toBe(od);
  expect(found?.wallMm, `${kind} ${size}`).toBe(wall);
  expect(found?.boreMm, `${kind} ${size}`).toBeCloseTo(od - 2 * wall, 6);
}

describe('tube with a wall', () => {
  it('EN 1057: copper is named by its outside and its wall, and its bore is what they leave', () => {
    for (const [size, od] of Object.entries({ ...WALLED.copper, ...WALLED.copperLarge })) {
      expectTube('copper', size, od, Number(size.split('x')[1]));
    }
  });

  it.each(STEEL)('EN 10255, medium: %s is %s outside, wall %s', (size, od, wall) => {
    expectTube('steel', size, od, wall);
  });

  it.each(WASTE)('waste %s is %s outside, wall %s', (size, od, wall) => {
    expectTube('waste', size, od, wall);
  });
});

/** Kinds whose size is their outside, mm; a flue is named by its inner and outer pipe. */
const BY_OUTSIDE = [
  ['plastic', '10', 10],
  ['plastic', '15', 15],
  ['plastic', '22', 22],
  ['plastic', '28', 28],
  ['pe', '20', 20],
  ['pe', '25', 25],
  ['pe', '32', 32],
  ['microbore', '8', 8],
  ['microbore', '10', 10],
  ['old-plastic', '15', 15],
  ['old-plastic', '22', 22],
  ['old-plastic', '28', 28],
  ['flue', '60/100', 100],
  ['flue', '80/125', 125],
] as const;

/** Old inch sizes as remembered: outside from, to and taken, mm. */
const INCHES = [
  ['copper-imperial', '1/2', 14.7, 15.2, 15],
  ['copper-imperial', '3/4', 21, 22.3, 22],
  ['copper-imperial', '1', 27.3, 28.6, 28.3],
  ['lead', '1/2', 21, 23.4, 22.2],
  ['lead', '3/4', 28, 31, 29.6],
  ['lead', '1', 34, 39, 36.5],
  ['old-plastic', '1/2', 21.2, 21.6, 21.4],
  ['old-plastic', '3/4', 26.6, 27, 26.8],
  ['old-plastic', '1', 33.4, 33.8, 33.6],
] as const;

describe('tube by its outside', () => {
  it.each(BY_OUTSIDE)('%s %s is named by it', (kind, size, od) => {
    expect(span(`tube-${kind}`, size, 'od')).toEqual(same(od));
  });

  it.each(INCHES)('pages on old pipe, and memory: %s %s in', (kind, size, lo, hi, value) => {
    expect(span(`tube-${kind}`, size, 'od')).toEqual([lo, hi, value]);
  });
});
