import { describe, expect, test } from 'vitest';
import { readNumber, showNumber } from '../../src/view/panels/inspect/typed-value.ts';

describe('a typed figure', () => {
  test('is a number, with a comma or a point', () => {
    expect(readNumber('850', {})).toEqual({ ok: true, value: 850 });
    expect(readNumber(' 0,5 ', {})).toEqual({ ok: true, value: 0.5 });
  });

  test('empty is not told where that may be, and wrong where it may not', () => {
    expect(readNumber('', { empty: true })).toEqual({ ok: true, value: null });
    expect(readNumber('', {}).ok).toBe(false);
  });

  test('a range is taken only where a figure may be bounded, lowest first', () => {
    expect(readNumber('24 to 30', { range: true })).toEqual({ ok: true, value: { lo: 24, hi: 30 } });
    expect(readNumber('30 to 30', { range: true })).toEqual({ ok: true, value: 30 });
    expect(readNumber('30 to 24', { range: true }).ok).toBe(false);
    expect(readNumber('24 to 30', {}).ok).toBe(false);
  });

  test.each(['abc', '1e', '--3', 'Infinity', '12 mm'])('"%s" is no number', (text) => {
    expect(readNumber(text, {}).ok).toBe(false);
  });

  test('bounds are told in words', () => {
    expect(readNumber('0', { min: 1 })).toEqual({ ok: false, wrong: 'At least 1.' });
    expect(readNumber('5 to 99', { range: true, max: 70 })).toEqual({ ok: false, wrong: 'At most 70.' });
  });

  test('a stored figure is shown to a tenth, a range as it is typed', () => {
    expect(showNumber(1920.04)).toBe('1920');
    expect(showNumber({ lo: 3200, hi: 4500 })).toBe('3200 to 4500');
    expect(showNumber(null)).toBe('');
  });
});
