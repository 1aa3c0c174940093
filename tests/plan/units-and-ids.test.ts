import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countingIds, randomIds } from '../../src/plan/ids.ts';
import {
  COINCIDENT_MM,
  LENGTH_STEP_MM,
  lPerSFromM3PerH,
  m3PerHFromLPerS,
  mbarFromPa,
  metresFromMm,
  mmFromMetres,
  paFromMbar,
  quantise,
} from '../../src/plan/units.ts';

describe('a stored length', () => {
  test('is the nearest tenth, written short', () => {
    expect(quantise(12.34)).toBe(12.3);
    expect(quantise(0.1 + 0.2)).toBe(0.3);
    expect(quantise(-0.04)).toBe(0);
    expect(Object.is(quantise(-0.04), 0)).toBe(true);
    expect(String(quantise(1e5 / 3))).toBe('33333.3');
  });

  test('stays what it is when it is stored again, and moves by half a step at most', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (mm) => {
        const once = quantise(mm);
        expect(quantise(once)).toBe(once);
        expect(Math.abs(once - mm)).toBeLessThanOrEqual(LENGTH_STEP_MM / 2 + 1e-9);
        expect(JSON.stringify(once)).toMatch(/^-?\d+(\.\d)?$/);
      }),
    );
  });

  test('two steps are still one place', () => {
    expect(COINCIDENT_MM).toBe(2 * LENGTH_STEP_MM);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is no length', (mm) => {
    expect(() => quantise(mm)).toThrow(RangeError);
  });
});

describe('units', () => {
  test('turn into each other and back', () => {
    expect(metresFromMm(2420)).toBe(2.42);
    expect(mmFromMetres(1.5)).toBe(1500);
    expect(paFromMbar(1)).toBe(100);
    expect(mbarFromPa(57)).toBe(0.57);
    expect(lPerSFromM3PerH(3.6)).toBe(1);
    expect(m3PerHFromLPerS(1)).toBe(3.6);
  });
});

describe('ids', () => {
  test('count past what is taken', () => {
    const ids = countingIds(new Set(['r2', 'r3']), 1);
    expect([ids.next('r'), ids.next('r'), ids.next('r')]).toEqual(['r1', 'r4', 'r5']);
  });

  test('of one source are the same every time', () => {
    const fill = (bytes: Uint8Array) => bytes.map((_, i) => (i * 37) % 256) as Uint8Array;
    expect(randomIds(fill).next('r')).toBe(randomIds(fill).next('r'));
    expect(randomIds(fill).next('r')).toMatch(/^r-[2-9a-hjkmnp-z]{10}$/);
  });

  test('from chance do not meet', () => {
    const ids = randomIds((bytes) => crypto.getRandomValues(new Uint8Array(bytes.length)));
    const made = new Set(Array.from({ length: 5000 }, () => ids.next('n')));
    expect(made.size).toBe(5000);
  });

  test('never use a letter that is read as a digit', () => {
    const all = new Set<string>();
    for (let b = 0; b < 256; b += 1) all.add(randomIds((bytes) => bytes.fill(b)).next('')[1] ?? '');
    expect([...all].join('')).not.toMatch(/[01ilo]/);
  });
});
