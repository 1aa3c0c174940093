import { describe, expect, test } from 'vitest';
import { between, exact } from '../../src/report/quantity.ts';
import type { Bar } from '../../src/report/section.ts';
import { axisFigure, barShape } from '../../src/view/panels/bar-shape.ts';

const bar = (
  lo: number,
  hi: number | null,
  state: Bar['state'],
  limit: number | null = 1,
  value: number | null = null,
): Bar => ({
  figure: between(lo, hi, 'mbar', 2, 'derived', value),
  limit,
  state,
});
const close = (pair: readonly [number, number] | null, lo: number, hi: number): void => {
  expect(pair?.[0]).toBeCloseTo(lo);
  expect(pair?.[1]).toBeCloseTo(hi);
};

describe('the bar against the post', () => {
  test('clear of it: solid, left of the post, with the middle value as a tick', () => {
    const shape = barShape(bar(0.5, 0.75, 'pass', 1, 0.57));
    close(shape.solid, 0.5 / 1.5, 0.75 / 1.5);
    expect(shape.post).toBeCloseTo(2 / 3);
    expect(shape.tick).toBeCloseTo(0.57 / 1.5);
    expect(shape).toMatchObject({ hatched: null, open: null, past: false });
  });

  test('across it: solid up to the post, hatched past it', () => {
    const shape = barShape(bar(0.82, 1.13, 'check'));
    close(shape.solid, 0.82 / 1.5, 2 / 3);
    close(shape.hatched, 2 / 3, 1.13 / 1.5);
  });

  test('past it: hatched alone', () => {
    const shape = barShape(bar(1.17, 1.43, 'stop'));
    expect(shape.solid).toBeNull();
    close(shape.hatched, 1.17 / 1.5, 1.43 / 1.5);
  });

  test('unbounded: an upright at the lowest, and nothing that looks like an end', () => {
    const shape = barShape(bar(0.31, null, 'cantTell'));
    expect(shape.open).toBeCloseTo(0.31 / 1.5);
    expect(shape).toMatchObject({ solid: null, hatched: null, tick: null });
  });

  test('off the line: only the sign that it goes on', () => {
    expect(barShape(bar(2.7, 4.7, 'stop'))).toMatchObject({ solid: null, hatched: null, past: true });
    expect(barShape(bar(1.2, 4.7, 'stop')).past).toBe(true);
  });

  test('a check of a lower limit, where nothing lies past the post, is not hatched', () => {
    expect(barShape(bar(0.2, 0.9, 'check')).hatched).toBeNull();
  });

  test('without a limit the line ends at a round figure over the bar', () => {
    const shape = barShape({ figure: exact(0.0089, 'm3', 4), limit: null, state: 'none' });
    expect(shape.post).toBeNull();
    expect(shape.top).toBeCloseTo(0.01);
    expect(barShape({ figure: exact(0, 'm', 1), limit: null, state: 'none' }).top).toBe(1);
  });

  test('figures under it are short', () => {
    expect([0.5, 1.5, 0.7500000001, 12].map(axisFigure)).toEqual(['0.5', '1.5', '0.75', '12']);
  });
});
