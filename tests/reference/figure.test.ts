import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constant, figure, word } from '../../src/reference/figure.ts';
import { sampleTable } from './sample-table.ts';

const t = sampleTable({});
const named = sampleTable({
  rowAxis: { id: 'thing', title: 'thing', unit: '', lookUp: 'none', from: null, to: null },
  columnAxis: { id: 'value', title: 'value', unit: '', lookUp: 'none', from: null, to: null },
  columns: [{ key: 'mm', unit: 'mm', digits: 0 }],
  rows: [
    { key: 'cable', cells: [25] },
    { key: 'sleeve', cells: ['22'], note: 'sealed inside' },
  ],
});

describe('figure', () => {
  it('gives a listed cell with its unit, digits and cite', () => {
    expect(figure(t, 10, 2)).toEqual({
      is: 'known',
      lo: 6,
      hi: 6,
      value: 6,
      unit: 'm3/h',
      digits: 1,
      sureness: 'page',
      cite: { source: 'a-book', clause: 'table 1', table: 'sample' },
      note: null,
    });
  });

  it('reads straight between columns', () => {
    expect(figure(t, 10, 3)).toMatchObject({ is: 'known', value: 4 });
    expect(figure(t, 10, 1.25)).toMatchObject({ is: 'known', value: 7.5 });
  });

  it('takes the next row up, and the row itself where it is listed', () => {
    expect(figure(t, 10.1, 1)).toMatchObject({ value: 16, sureness: 'memory', cite: { clause: 'row two' } });
    expect(figure(t, 20, 1)).toMatchObject({ value: 16 });
  });

  it('takes the next row down where that is the rule', () => {
    const down = sampleTable({ rowAxis: { ...t.rowAxis, lookUp: 'next-size-down' } });
    expect(figure(down, 19.9, 1)).toMatchObject({ value: 8 });
    expect(figure(down, 9.9, 1)).toMatchObject({ is: 'outside' });
  });

  it('never reads past an end', () => {
    for (const [row, column, axis] of [
      [9.9, 1, 'size'],
      [30.1, 1, 'size'],
      [10, 0.99, 'length'],
      [10, 4.01, 'length'],
    ] as const) {
      expect(figure(t, row, column)).toMatchObject({ is: 'outside', axis });
    }
    expect(figure(t, Number.NaN, 1)).toMatchObject({ is: 'outside' });
    expect(figure(t, 10, 5)).toMatchObject({ is: 'outside', asked: 5, from: 1, to: 4 });
  });

  it('keeps the doubt of a cell, and says so where nobody has read one', () => {
    expect(figure(t, 30, 1)).toMatchObject({ lo: 20, hi: 24, value: 21 });
    expect(figure(t, 30, 2)).toMatchObject({ is: 'unknown' });
    expect(figure(t, 30, 1.5)).toMatchObject({ is: 'unknown' });
    expect(figure(t, 30, 4)).toMatchObject({ is: 'unknown' });
  });

  it('takes names exactly, and needs no column where there is one', () => {
    expect(figure(named, 'cable')).toMatchObject({ value: 25, unit: 'mm' });
    expect(figure(named, 'Cable')).toMatchObject({ is: 'unknown' });
    expect(figure(named, 'cable', 'inch')).toMatchObject({ is: 'unknown' });
    expect(word(named, 'sleeve')).toMatchObject({ is: 'known', word: '22', note: 'sealed inside' });
    expect(word(named, 'cable')).toMatchObject({ is: 'unknown' });
  });

  it('throws where a constant of a method is not there', () => {
    expect(constant(t, 10, 1)).toBe(8);
    expect(() => constant(t, 30, 2)).toThrow('no constant');
    expect(() => figure('no-such-table', 1)).toThrow('no-such-table');
  });

  it('between two columns lies between their cells', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 4, noNaN: true }), (x) => {
        const found = figure(t, 20, x);
        expect(found.is).toBe('known');
        if (found.is === 'known') expect(found.lo >= 4 - 1e-9 && found.lo <= 16 + 1e-9).toBe(true);
      }),
    );
  });
});
