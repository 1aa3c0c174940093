import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/text/measure.ts';

describe('widths of text', () => {
  test('every digit has one advance at every weight', () => {
    for (const weight of [400, 600] as const) {
      for (const digit of '0123456789') expect(textWidth(digit, 1, weight)).toBe(0.56);
    }
  });
  test('a line is as wide as its letters, in the unit of its size', () => {
    expect(textWidth('2420', 3.5, 600)).toBeCloseTo(4 * 0.56 * 3.5);
    expect(textWidth('', 10, 400)).toBe(0);
  });
  test('a letter the font does not have takes the room of the box that stands for it', () => {
    expect(textWidth('\u2192', 1, 400)).toBeGreaterThan(0.4);
  });
});
