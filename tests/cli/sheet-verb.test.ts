import { describe, expect, test } from 'vitest';
import { call } from './fake-terminal.ts';

const DAY = ['--date', '2026-05-04'] as const;

describe('sheet', () => {
  test('gives every usual sheet as one page that prints at true size', async () => {
    const { code, out, err } = await call('sheet', 'flat.json', ...DAY);
    expect([code, err]).toEqual([0, '']);
    expect(out.startsWith('<!doctype html>')).toBe(true);
    expect(out).toContain('@page A4-across{size:297mm 210mm;margin:0}');
    const count = out.match(/<div class="sheet /g)?.length ?? 0;
    expect(count).toBeGreaterThan(4);
    for (let n = 1; n <= count; n++) expect(out).toContain(`>sheet ${n} of ${count}<`);
    expect(out).toContain('>2026-05-04<');
    expect((await call('sheet', 'flat.json', ...DAY)).out).toBe(out);
  });

  test('writes one SVG a sheet, numbered where there are several', async () => {
    const one = await call('sheet', 'flat.json', '--sheets', 'plan', '--paper', 'A3-across', '--out', 'p.svg', ...DAY);
    expect(Object.keys(one.written)).toEqual(['p.svg']);
    expect(one.written['p.svg']).toContain('width="420mm" height="297mm"');
    const parts = await call('sheet', 'flat.json', '--sheets=plan', '--scale=1:20', '--out=p.svg', ...DAY);
    const files = Object.keys(parts.written);
    expect(files.length).toBeGreaterThan(2);
    expect(files[0]).toBe('p-1.svg');
    expect(parts.written['p-1.svg']).toContain('Scale 1:20');
    expect(parts.written['p-1.svg']).toContain('match line: sheet 2');
  });

  test.each([
    [['--paper', 'A0'], 'A4-across'],
    [['--sheets', 'section'], 'there is no sheet "section"'],
    [['--scale', 'fit'], '--scale is the figure after "1:"'],
    [['--date', 'today'], '--date is YYYY-MM-DD'],
  ])('%j is refused in words', async (flags, said) => {
    const { code, out, err } = await call('sheet', 'flat.json', ...flags);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });
});
