import { describe, expect, it } from 'vitest';
import { sectionDrop } from '../../src/engine/gas/section-drop.ts';
import { figure } from '../../src/reference/figure.ts';
import { inverse } from '../../src/reference/inverse.ts';
import { table } from '../../src/reference/tables.ts';
import { m3PerH, section } from '../engine/gas/ask.ts';

/**
 * Typed a second time from the one-sheet reproduction of the BS 6891 copper table, column by column where the shared file
 * goes row by row. Length m: discharge m3/h in 10, 12, 15, 22, 28 mm tube for 1.0 mbar.
 */
const AGAIN: Readonly<Record<string, readonly number[]>> = {
  3: [0.84, 1.52, 2.9, 8.7, 18],
  6: [0.56, 1.01, 1.9, 5.8, 12],
  9: [0.51, 0.84, 1.5, 4.6, 9.4],
  12: [0.36, 0.82, 1.3, 3.9, 8.0],
  15: [0.31, 0.67, 1.1, 3.6, 7.2],
  20: [0.22, 0.51, 0.95, 2.8, 6.0],
  25: [0.17, 0.39, 0.92, 2.6, 5.4],
  30: [0.14, 0.33, 0.88, 2.3, 4.8],
};
const SIZES = ['10x0.6', '12x0.6', '15x0.7', '22x0.9', '28x0.9'];
const copper = table('gas-discharge-copper');
const cell = (size: string, m: number): number => AGAIN[m]?.[SIZES.indexOf(size)] ?? Number.NaN;

describe('published discharge table, copper', () => {
  it('every cell is as it was typed the second time, and no other is there', () => {
    expect(copper.columns.map((c) => c.key)).toEqual(Object.keys(AGAIN));
    expect(copper.rows.map((r) => r.key)).toEqual(SIZES);
    for (const row of copper.rows) {
      expect(row.cells).toEqual(Object.keys(AGAIN).map((m) => cell(row.key, Number(m))));
    }
  });

  it('its sum is that of the second copy, added on paper', () => {
    const sum = copper.rows
      .flatMap((r) => r.cells)
      .reduce<number>((s, c) => s + (typeof c === 'number' ? c : Number.NaN), 0);
    expect(sum).toBeCloseTo(3.11 + 6.09 + 11.45 + 34.3 + 70.8, 9);
  });

  it('falls along and rises down, and was read as a quotation', () => {
    expect(copper).toMatchObject({ alongRow: 'falling', downColumn: 'rising', sureness: 'quotation' });
  });

  it('a section of a listed length and flow loses 1 mbar of length over length, in every cell', () => {
    for (const size of SIZES) {
      for (const m of Object.keys(AGAIN).map(Number)) {
        expect(sectionDrop(section(size, m, 0, m3PerH(cell(size, m)))).table).toMatchObject({
          lo: expect.closeTo(1, 12),
          hi: expect.closeTo(1, 12),
        });
        expect(sectionDrop(section(size, m / 4, 0, m3PerH(cell(size, m)))).table?.value).toBeCloseTo(0.25, 12);
      }
    }
  });

  it('off the nodes it reads straight between', () => {
    expect(figure(copper, '22x0.9', 17.5)).toMatchObject({ is: 'known', lo: expect.closeTo(3.2, 12) });
    expect(inverse(copper, '28x0.9', 15)).toMatchObject({ is: 'known', at: expect.closeTo(4.5, 12) });
    // 15 mm, 20 to 30 m: the flat stretch is kept, not smoothed.
    expect(figure(copper, '15x0.7', 25)).toMatchObject({ lo: 0.92 });
    expect(figure(copper, '15x0.7', 22.5)).toMatchObject({ lo: expect.closeTo(0.935, 12) });
  });

  it('outside it there is a bound or nothing, never a longer or a shorter column', () => {
    for (const size of SIZES) {
      const last = cell(size, 30);
      expect(figure(copper, size, 30.1)).toMatchObject({ is: 'outside', from: 3, to: 30 });
      expect(figure(copper, size, 2.9)).toMatchObject({ is: 'outside' });
      expect(sectionDrop(section(size, 10, 0, m3PerH(last * 0.9))).table).toMatchObject({
        lo: 0,
        hi: expect.closeTo(10 / 30, 12),
        value: null,
      });
      expect(sectionDrop(section(size, 10, 0, m3PerH(cell(size, 3) * 1.01))).table).toBeNull();
    }
    expect(figure(copper, '35x1.2', 10)).toMatchObject({ is: 'unknown' });
  });

  it('the remembered copy differs only where it is said to, by at most 7 %', () => {
    const other = table('gas-discharge-copper-recalled');
    expect(other.sureness).toBe('memory');
    for (const [i, row] of other.rows.entries()) {
      for (const [j, c] of row.cells.entries()) {
        const read = copper.rows[i]?.cells[j];
        if (typeof c !== 'number' || typeof read !== 'number') throw new Error('a table of numbers');
        expect(Math.abs(c / read - 1)).toBeLessThanOrEqual(0.0715);
        if (row.key === '15x0.7') expect(c).toBe(read);
      }
    }
  });

  it('the steel table is from memory and shows so wherever it is used', () => {
    const found = sectionDrop(section('20', 9, 0, m3PerH(5.3), { tubeKind: 'steel' }));
    expect(found.table).toMatchObject({ lo: 1, hi: 1, sureness: 'memory' });
    expect(found.drop.sureness).toBe('memory');
  });
});
