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

  test('a length in mm is taken as it is said: in metres, centimetres or mm', () => {
    expect(readNumber('4.9 m', { unit: 'mm' })).toEqual({ ok: true, value: 4900 });
    expect(readNumber('4,905m', { unit: 'mm' })).toEqual({ ok: true, value: 4905 });
    expect(readNumber('12 mm', { unit: 'mm' })).toEqual({ ok: true, value: 12 });
    expect(readNumber('35 cm', { unit: 'mm' })).toEqual({ ok: true, value: 350 });
    expect(readNumber('3.2 m to 4.5 m', { unit: 'mm', range: true })).toEqual({
      ok: true,
      value: { lo: 3200, hi: 4500 },
    });
    expect(readNumber('31 m', { unit: 'kW' }).ok).toBe(false);
    expect(readNumber('m', { unit: 'mm' }).ok).toBe(false);
    expect(readNumber('200 m', { unit: 'mm', max: 100_000 }).ok).toBe(false);
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
