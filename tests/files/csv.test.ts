import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CsvCell, csv } from '../../src/files/format/csv.ts';

/** A reader of RFC 4180 of its own, so that the writer is not judged by itself. */
function readRows(text: string, separator: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let inQuotes = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i];
    if (inQuotes) {
      if (c === '"' && text[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else if (c === '"') inQuotes = false;
      else cell += c;
    } else if (c === '"' && cell === '') inQuotes = true;
    else if (c === separator || (c === '\r' && text[i + 1] === '\n')) {
      rows.at(-1)?.push(cell);
      cell = '';
      if (c !== '\r') continue;
      rows.push([]);
      i += 1;
    } else cell += c;
  }
  rows.pop();
  return rows;
}

const harmless = fc.string({ unit: 'grapheme' }).map((text) => `x${text}`);
const cellText = fc.oneof(harmless, fc.constantFrom('x"', 'x,y', 'x;y', 'x\r\ny', 'x\ny', 'x ', 'x\ty', ''));

describe('a sheet', () => {
  test.each([',', ';', '\t'] as const)('comes back cell by cell, separated by %j', (separator) => {
    const table = fc.array(fc.array(cellText, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(table, (rows) => {
        expect(readRows(csv(rows, { separator }), separator)).toEqual(rows);
      }),
      { numRuns: 300 },
    );
  });

  test('ends every line as the standard says, the last one too', () => {
    expect(
      csv([
        ['a', 'b'],
        ['c', 'd'],
      ]),
    ).toBe('a,b\r\nc,d\r\n');
  });

  test('writes numbers, yes and no, and nothing', () => {
    const row: CsvCell[] = [1.5, -12, true, false, null, Number.NaN];
    expect(csv([row])).toBe('1.5,-12,yes,no,,\r\n');
    expect(csv([row], { separator: ';', decimal: ',' })).toBe('1,5;-12;yes;no;;\r\n');
    expect(csv([[1.5]], { decimal: ',' })).toBe('"1,5"\r\n');
  });

  test('puts a mark in front only when asked', () => {
    expect(csv([['a']], { mark: true }).charCodeAt(0)).toBe(0xfeff);
    expect(csv([['a']]).startsWith('a')).toBe(true);
  });

  test('never hands a sheet program a sum to run', () => {
    for (const text of ['=1+1', '+44', '-2', '@SUM(A1)', ' =1', '\t=1', '\r=1', '\n', '\uff1d1']) {
      const cell = readRows(csv([[text, 'x']]), ',')[0]?.[0] ?? '';
      expect(cell, JSON.stringify(text)).toBe(`'${text}`);
    }
    fc.assert(
      fc.property(fc.string(), (text) => {
        const cell = readRows(csv([[text, 'x']]), ',')[0]?.[0] ?? '';
        return !/^\s*[=+\-@]/.test(cell);
      }),
    );
  });

  test('leaves a negative number a number', () => {
    expect(csv([[-12]])).toBe('-12\r\n');
  });
});
