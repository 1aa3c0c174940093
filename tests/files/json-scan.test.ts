import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scanJson } from '../../src/files/format/json-scan.ts';
import { lineAndColumn } from '../../src/files/format/json-tokens.ts';

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};
/** Texts near enough to JSON to be interesting. */
const nearly = fc
  .array(
    fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      'a',
      '\\',
      'u00e9',
      '1',
      '-',
      '.',
      'e',
      '0',
      ' ',
      '\n',
      'true',
      'null',
      '"k":',
    ),
    { maxLength: 14 },
  )
  .map((parts) => `[${parts.join('')}]`);

describe('the scan of a text', () => {
  test('agrees with the parser on what is JSON', () => {
    fc.assert(
      fc.property(nearly, (text) => (scanJson(text).fault === null) === parses(text)),
      { numRuns: 5000 },
    );
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(undefined, 1, 2), (json, indent) => {
        const text = JSON.stringify([JSON.parse(json)], null, indent);
        return scanJson(text).fault === null;
      }),
    );
  });

  test('gives the whole part of any text that breaks off', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), fc.nat(), (json, cut) => {
        const text = `{"first":1,"rest":${json}}`;
        const scan = scanJson(text.slice(0, 1 + (cut % (text.length - 1))));
        expect(scan.fault?.why).toBe('the text breaks off');
        expect(parses(scan.whole)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('keeps every whole value before the break', () => {
    expect(scanJson('{"a":{"b":[1,2,3').whole).toBe('{"a":{"b":[1,2]}}');
    expect(scanJson('{"a":1,"b":{"c":"tr').whole).toBe('{"a":1,"b":{}}');
    expect(scanJson('{"a":1,"b"').whole).toBe('{"a":1}');
  });

  test.each([
    ['{"a":1,}', 'a name in quotes should stand here', 1, 8],
    ['{\n "a" 1}', 'a colon should stand here', 2, 6],
    ['[1 2]', 'a comma or a closing bracket should stand here', 1, 4],
    ['[01]', 'a comma or a closing bracket should stand here', 1, 3],
    ['{"a":1} x', 'nothing more should follow', 1, 9],
    ['{"a":"line\nbreak"}', 'a value should stand here', 1, 6],
    ['[nil]', 'a value or ] should stand here', 1, 2],
    ['', 'the text breaks off', 1, 1],
  ])('%j: %s', (text, why, line, column) => {
    const { fault } = scanJson(text);
    expect(fault?.why).toBe(why);
    expect(lineAndColumn(text, fault?.at ?? -1)).toEqual({ line, column });
  });

  test('counts depth without recursion and names what stands twice', () => {
    expect(scanJson('['.repeat(300_000)).depth).toBe(300_000);
    expect(scanJson('{"r7":{},"x":{"r7":1},"r7":{}}').repeated).toEqual(['r7']);
  });

  test('reads a long string', () => {
    const text = JSON.stringify({ photo: 'A'.repeat(8_000_000) });
    expect(scanJson(text).fault).toBeNull();
  });
});
