import { describe, expect, it } from 'vitest';
import { bendGain, bendLength } from '../../src/engine/materials/bend-length.ts';
import { expansion } from '../../src/engine/materials/expansion.ts';
import { constant, figure } from '../../src/reference/figure.ts';
import { edition, table } from '../../src/reference/tables.ts';
import type { Working } from '../../src/report/working.ts';

const TEXTBOOK = { 'bend-radius': 'bend-radius-textbook' };
const square = (size: string, editions = {}): Working =>
  bendLength({ kind: 'copper', size, deg: 90, radiusMm: null, legsMm: null, editions });
const stepOf = (w: Working, label: string): number =>
  w.steps.find((s) => s.label === label)?.result?.value ?? Number.NaN;

describe('college textbook 2019, viewer page 107: machine bends', () => {
  it('15 at 4 diameters: a radius of 60, 60 x 1.57 is 94.2 in the bend', () => {
    const working = square('15', TEXTBOOK);
    expect(stepOf(working, 'Radius on the centre line')).toBe(60);
    expect(working.result?.value).toBeCloseTo(94.2, 1);
    expect(working.steps.flatMap((s) => s.cites.map((c) => c.clause))).toContain('viewer page 107');
  });

  it('radius of about 4 diameters, saving of 1.5 diameters, for 15, 22 and 28', () => {
    for (const [size, radius, saving] of [
      ['15', 60, 22.5],
      ['22', 88, 33],
      ['28', 112, 42],
    ] as const) {
      expect(constant('bend-radius-textbook', size)).toBe(radius);
      expect(stepOf(square(size), 'Saving by the rule of thumb')).toBe(saving);
    }
  });

  it('both cannot be: the saving is that of 3.5 diameters, which is the default, and not that of 4', () => {
    expect(edition('bend-radius', {})?.id).toBe('bend-radius-former');
    for (const [size, ofFour, ofThreeAndAHalf, ofThree, od] of [
      ['15', 25.8, 22.5, 19.3, 15],
      ['22', 37.8, 33.0, 28.3, 22],
      ['28', 48.1, 42.1, 36.1, 28],
    ] as const) {
      const saving = (editions: Readonly<Record<string, string>>): number =>
        stepOf(square(size, editions), 'Saving against centre to centre');
      expect(Math.abs(saving(TEXTBOOK) - ofFour)).toBeLessThanOrEqual(0.05);
      expect(Math.abs(saving({}) - ofThreeAndAHalf)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(bendGain(3 * od, 90) - ofThree)).toBeLessThanOrEqual(0.06);
      expect(Math.abs(saving({}) - stepOf(square(size), 'Saving by the rule of thumb'))).toBeLessThan(0.1);
    }
  });

  it('viewer page 124: polybutylene is bent no tighter than 80, 120, 160, 224', () => {
    for (const [size, radiusMm] of [
      ['10', 80],
      ['15', 120],
      ['22', 160],
      ['28', 224],
    ] as const) {
      const ask = { kind: 'plastic', size, deg: 90, legsMm: null, editions: {} };
      expect(bendLength({ ...ask, radiusMm }).result?.value).toBeCloseTo((radiusMm * Math.PI) / 2, 9);
      expect(bendLength({ ...ask, radiusMm: radiusMm - 1 })).toMatchObject({ result: null });
    }
  });

  it('EN 1057 as recalled: 45, 55, 70 for 12, 15 and 18, told and not refused', () => {
    for (const [size, mm] of [
      ['12', 45],
      ['15', 55],
      ['18', 70],
    ] as const) {
      expect(figure('bend-least-radius', `copper ${size}`)).toMatchObject({ value: mm, sureness: 'memory' });
    }
    expect(square('15').assumed.join()).toContain('55');
    expect(square('15').result).not.toBeNull();
  });
});

describe('the saving at any angle, exact', () => {
  it('45 and 60 degrees by the known tangents', () => {
    const r = 100;
    expect(bendGain(r, 90)).toBeCloseTo((2 - Math.PI / 2) * r, 10);
    expect(bendGain(r, 45)).toBeCloseTo(2 * r * (Math.SQRT2 - 1) - (r * Math.PI) / 4, 10);
    expect(bendGain(r, 60)).toBeCloseTo((2 * r) / Math.sqrt(3) - (r * Math.PI) / 3, 10);
    expect(bendGain(r, 120)).toBeCloseTo(2 * r * Math.sqrt(3) - (r * 2 * Math.PI) / 3, 10);
  });
});

describe('thermal expansion', () => {
  const ask = { material: 'copper', lengthM: 10, riseK: 40 };

  it('trade web page: copper, 10 m, 40 K, at 0.017: 6.8 mm, and the range of three pages ends there', () => {
    expect(expansion({ ...ask, mmPerMK: 0.017 }).result?.value).toBeCloseTo(6.8, 9);
    const read = expansion({ ...ask, mmPerMK: null }).result;
    expect(read).toMatchObject({
      lo: expect.closeTo(6.56, 9),
      hi: expect.closeTo(6.8, 9),
      value: expect.closeTo(6.64, 9),
    });
  });

  it('engineering web page: PVC, 6 m, 60 K, at 50.4e-6: 18 mm', () => {
    const pvc = { material: 'pvc-u', lengthM: 6, riseK: 60 };
    const told = expansion({ ...pvc, mmPerMK: 50.4e-6 * 1000 }).result?.value ?? Number.NaN;
    expect(Math.round(told)).toBe(18);
    expect(told).toBeCloseTo(18.144, 6);
    expect(expansion({ ...pvc, mmPerMK: null }).result).toMatchObject({
      lo: expect.closeTo(18, 9),
      hi: expect.closeTo(28.8, 9),
      value: null,
    });
  });

  it('the slip by ten of a textbook, 0.00000166 for copper, is refused, told beside the table and in no cell of it', () => {
    for (const slip of [0.00000166 * 1000, 0.166]) {
      const working = expansion({ ...ask, mmPerMK: slip });
      expect(working.result).toBeNull();
      expect(working.missing.join()).toContain('within 0.0164 to 0.0170');
    }
    expect(table('thermal-expansion').notes.join()).toContain('slip by ten');
    const cells = JSON.stringify(table('thermal-expansion').rows);
    expect(cells).not.toContain('0.00166');
    expect(cells).not.toContain('0.00000166');
  });

  it('every material, typed a second time', () => {
    const again: Readonly<Record<string, readonly [number, number]>> = {
      copper: [0.0164, 0.017],
      pex: [0.14, 0.18],
      pb: [0.13, 0.13],
      'pex-al-pex': [0.024, 0.025],
      pp: [0.15, 0.15],
      'pvc-u': [0.05, 0.08],
      abs: [0.06, 0.1],
    };
    expect(table('thermal-expansion').rows.map((r) => r.key)).toEqual(Object.keys(again));
    for (const [material, [lo, hi]] of Object.entries(again)) {
      const one = expansion({ material, lengthM: 1, riseK: 1, mmPerMK: null }).result;
      expect([one?.lo, one?.hi]).toEqual([lo, hi]);
    }
  });
});
