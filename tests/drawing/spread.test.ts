import { describe, expect, test } from 'vitest';
import { shiftMm, spreadMm } from '../../src/drawing/paint/spread.ts';

const shift = (index: number, gaps: number[], anchor = 0.5) => ({ n: [0, 1] as const, gaps, index, anchor });

describe('a bank spread to be read', () => {
  test('at 1:50 lines 60 apart go to 2.1 mm of paper, about their middle', () => {
    const moved = [0, 1, 2].map((i) => shiftMm(shift(i, [60, 60]), 50));
    expect(moved).toEqual([-45, 0, 45]);
  });

  test('at 1:20 they are far enough apart, and stay', () => {
    expect([0, 1, 2].map((i) => shiftMm(shift(i, [60, 60]), 20))).toEqual([0, 0, 0]);
  });

  test('only gaps that are too small grow', () => {
    expect([0, 1, 2].map((i) => shiftMm(shift(i, [10, 200]), 50))).toEqual([-47.5, 47.5, 47.5]);
  });

  test('beside a wall the line next to it stays', () => {
    expect([0, 1].map((i) => shiftMm(shift(i, [60], 0), 50))).toEqual([0, 45]);
    expect([0, 1].map((i) => shiftMm(shift(i, [60], 1), 50))).toEqual([-45, 0]);
  });

  test('a corner moves to where both moved lines meet', () => {
    const corner = [
      { n: [0, 1] as const, gaps: [60], index: 1, anchor: 0.5 },
      { n: [1, 0] as const, gaps: [60], index: 0, anchor: 0.5 },
    ];
    const [x, y] = spreadMm(corner, 50);
    expect(x).toBeCloseTo(-22.5);
    expect(y).toBeCloseTo(22.5);
  });

  test('two lines in line give the first one its way', () => {
    const one = { n: [0, 1] as const, gaps: [60], index: 1, anchor: 0.5 };
    expect(spreadMm([one, { ...one, index: 0 }], 50)).toEqual([0, 22.5]);
  });
});
