import { describe, expect, it } from 'vitest';
import { figure } from '../../src/reference/figure.ts';
import { inverse } from '../../src/reference/inverse.ts';
import { sampleTable } from './sample-table.ts';

const t = sampleTable({});

describe('inverse', () => {
  it('finds the column of a listed cell and of one between', () => {
    expect(inverse(t, '10', 8)).toMatchObject({ is: 'known', at: 1, stepped: 1 });
    expect(inverse(t, '10', 6)).toMatchObject({ is: 'known', at: 2, stepped: 2 });
    expect(inverse(t, '10', 5)).toMatchObject({ is: 'known', at: 2.5, stepped: 2 });
    expect(inverse(t, '10', 2)).toMatchObject({ is: 'known', at: 4, stepped: 4 });
  });

  it('is the other way round of figure', () => {
    for (const x of [1, 1.3, 2, 2.9, 3.999, 4]) {
      const there = figure(t, '20', x);
      if (there.is !== 'known') throw new Error('known by the table');
      const back = inverse(t, '20', there.lo);
      expect(back.is === 'known' && Math.abs(back.at - x) < 1e-9).toBe(true);
    }
  });

  it('names the end it is past and never goes on', () => {
    expect(inverse(t, '10', 1.99)).toMatchObject({ is: 'pastLast', end: 4, endCell: 2 });
    expect(inverse(t, '10', 0)).toMatchObject({ is: 'pastLast', end: 4 });
    expect(inverse(t, '10', 8.01)).toMatchObject({ is: 'beforeFirst', end: 1, endCell: 8 });
  });

  it('does not know a missing row, a row with a gap, a row that does not fall, or no number', () => {
    expect(inverse(t, '40', 5)).toEqual({ is: 'unknown' });
    expect(inverse(t, '30', 5)).toEqual({ is: 'unknown' });
    expect(inverse(sampleTable({ alongRow: null }), '10', 5)).toEqual({ is: 'unknown' });
    expect(inverse(t, '10', Number.NaN)).toEqual({ is: 'unknown' });
  });
});
