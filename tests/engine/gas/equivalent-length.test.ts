import { describe, expect, it } from 'vitest';
import { effectiveLength, equivalentLength, type FITTING_CLASSES } from '../../../src/engine/gas/equivalent-length.ts';
import { tube } from '../../../src/reference/tubes.ts';
import { metres } from './ask.ts';

const older = { 'gas-fittings': 'gas-fittings-older' };

describe('equivalent length', () => {
  it('2015 edition: the quoted rows of 15 and 22', () => {
    const row = (size: string) =>
      (['elbow90', 'bend90', 'bend45'] as const).map((c) => equivalentLength('copper', size, c, {}).length);
    expect(row('15').map((q) => q.value)).toEqual([0.4, 0.2, 0.15]);
    expect(row('22').map((q) => q.value)).toEqual([0.6, 0.3, 0.2]);
    expect([...row('15'), ...row('22')].map((q) => q.sureness)).toEqual(Array(6).fill('quotation'));
  });

  it('older editions: one figure for any size to 28', () => {
    for (const size of ['15', '22', '28']) {
      const of = (c: (typeof FITTING_CLASSES)[number]) => equivalentLength('copper', size, c, older).length.value;
      expect([of('elbow90'), of('bend90'), of('tee-run'), of('tee-branch')]).toEqual([0.5, 0.3, 0.5, 0.5]);
    }
    expect(equivalentLength('copper', '35', 'elbow90', older).length).toMatchObject({ value: 1, sureness: 'memory' });
    expect(equivalentLength('copper', '54', 'elbow90', older).length).toMatchObject({ value: 1.5, sureness: 'memory' });
  });

  it('the derived rows of 28 and 35 are the same number of bores as the quoted ones, to the nearest 0.05', () => {
    for (const size of ['28', '35']) {
      const bore = tube('copper', size)?.boreMm ?? Number.NaN;
      const of = (c: (typeof FITTING_CLASSES)[number]) => equivalentLength('copper', size, c, {}).length;
      expect(of('elbow90').sureness).toBe('derived');
      expect(Math.abs((of('elbow90').value ?? 0) - (30 * bore) / 1000)).toBeLessThanOrEqual(0.026);
      expect(Math.abs((of('bend90').value ?? 0) - (15 * bore) / 1000)).toBeLessThanOrEqual(0.026);
    }
  });

  it('tees of the 2015 edition were not read: bounds, the turn never less than straight on', () => {
    for (const size of ['15', '22', '28', '35']) {
      const run = equivalentLength('copper', size, 'tee-run', {}).length;
      const branch = equivalentLength('copper', size, 'tee-branch', {}).length;
      expect(run).toMatchObject({ lo: 0, hi: 0.5, value: 0, sureness: 'derived' });
      expect(branch.lo).toBeLessThan(branch.hi ?? 0);
      expect(branch.lo).toBeGreaterThan(run.lo);
      expect(branch.hi ?? 0).toBeGreaterThan(run.hi ?? 9);
    }
  });

  it('no row, no figure', () => {
    for (const [kind, size] of [
      ['pe', '32'],
      ['copper', '8'],
      ['copper', null],
      ['csst', '22'],
    ] as const) {
      expect(equivalentLength(kind, size, 'elbow90', {})).toMatchObject({ known: false, length: { lo: 0, hi: null } });
    }
    expect(effectiveLength('pe', '32', metres(4), [{ class: 'elbow90', count: 1 }], {})).toMatchObject({
      length: { lo: 4, hi: null },
      missing: ['length to add for elbow of 32'],
    });
  });

  it('none of a class adds nothing, whether it is known or not', () => {
    expect(effectiveLength('pe', '32', metres(4), [{ class: 'elbow90', count: 0 }], {})).toMatchObject({
      length: { lo: 4, hi: 4, value: 4 },
      missing: [],
    });
  });

  it('says the sum in words', () => {
    expect(
      effectiveLength(
        'copper',
        '22',
        metres(2.8),
        [
          { class: 'elbow90', count: 3 },
          { class: 'tee-run', count: 1 },
        ],
        {},
      ).how,
    ).toBe('2.8 m + 3 x elbow at 0.60 + 1 x straight on through a tee at 0.00 to 0.50');
  });
});
