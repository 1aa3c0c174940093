import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import widths from '../../shared/fonts/hanken-grotesk.json' with { type: 'json' };
import { issueSheets } from '../../src/drawing/sheet/issue.ts';
import { PAPERS, paperOf } from '../../src/drawing/sheet/paper.ts';
import { sheetChoices } from '../../src/drawing/sheet/sheet-kinds.ts';
import { readTrueType } from '../../src/files/format/pdf/true-type.ts';
import { writePdf } from '../../src/files/format/pdf/write-pdf.ts';
import { demo } from '../drawing/demo.ts';
import { sheetJob } from '../drawing/sheet-job.ts';
import { AFTER, page, wall } from '../drawing/small-plan.ts';
import { readPdf } from './pdf-lines.ts';

const ttf = (weight: 400 | 600): Uint8Array =>
  readFileSync(new URL(`../../shared/fonts/hanken-grotesk-${weight}.ttf`, import.meta.url));
const fonts = { 400: ttf(400), 600: ttf(600) };
const CHOICES = { title: 'Test', writer: 'Kickset', fonts };
const A4 = paperOf('A4-across') ?? PAPERS[0]!;

describe('the font', () => {
  test.each([400, 600] as const)('at %i has the widths that drawings are measured by', (weight) => {
    const font = readTrueType(fonts[weight]);
    const told: Record<string, number> = widths.advances[weight];
    const odd = Object.entries(told).filter(([letter, em]) => {
      const glyph = font.glyphOf(letter.codePointAt(0) ?? 0);
      // The soft hyphen takes no room in a line; in the file it has the width of a hyphen.
      return letter !== '\u00ad' && glyph !== 0 && Math.abs((font.widths[glyph] ?? 0) / font.unitsPerEm - em) > 0.0011;
    });
    expect(odd).toEqual([]);
    for (const letter of 'Kickset 0123 m³ · × – ½ ° £')
      expect(font.glyphOf(letter.codePointAt(0) ?? 0), letter).toBeGreaterThan(0);
  });

  test('is refused where it is none', () => {
    expect(() => readTrueType(new Uint8Array(40))).toThrow('no TrueType');
  });
});

describe('a PDF of sheets', () => {
  test('shows a wall of 1000 mm as long as the scale says', async () => {
    const plan = page();
    wall(plan, 'w', [0, 0], [1000, 0]);
    for (const scale of [10, 20, 50]) {
      const sheets = issueSheets(sheetJob(plan, AFTER), { paper: A4, keys: ['plan:S'], scales: { 'plan:S': scale } });
      const [only] = readPdf(Buffer.from(await writePdf(sheets, CHOICES)));
      const long = 1000 / scale;
      const thick = 100 / scale;
      const walls = only?.shapes.filter(
        (s) => Math.abs(s.w - long) < long * 0.005 && Math.abs(s.h - thick) < thick * 0.005,
      );
      expect(walls?.length, `1:${scale}`).toBeGreaterThanOrEqual(1);
    }
  });

  test('has pages of true size, lines for lines and text for text', async () => {
    const job = sheetJob(demo('flat'), AFTER);
    const keys = sheetChoices(job).map((c) => c.key);
    const sheets = issueSheets(job, { paper: A4, keys });
    const file = Buffer.from(await writePdf(sheets, CHOICES));
    const pages = readPdf(file);
    expect(pages).toHaveLength(sheets.length);
    for (const [i, p] of pages.entries()) {
      expect(p.wMm).toBeCloseTo(297, 2);
      expect(p.hMm).toBeCloseTo(210, 2);
      expect(p.images).toBe(0);
      expect(p.shapes.length).toBeGreaterThan(5);
      const text = p.text.join(' ');
      expect(text).toContain('Limits compared, not approved: the registered engineer decides.');
      expect(text).toContain(`sheet ${i + 1} of ${sheets.length}`);
      expect(text).toContain('First-floor flat');
      const right = Math.max(...p.shapes.map((s) => s.x + s.w));
      expect(right).toBeLessThanOrEqual(297);
    }
    expect(file.toString('latin1')).toContain('/PrintScaling /None');
    expect(file.toString('latin1')).toContain('/FontFile2');
    expect(file.length).toBeLessThan(300_000);
  });

  test('carries a name with letters the font has not, in their plain form', async () => {
    const plan = { ...page(), name: 'Łódź, flat 3' };
    const sheets = issueSheets(sheetJob(plan, AFTER), { paper: A4, keys: ['basis'] });
    const [only] = readPdf(Buffer.from(await writePdf(sheets, CHOICES)));
    expect(only?.text.join(' ')).toMatch(/.ó.*flat 3/);
  });

  test('of nothing is refused', async () => {
    await expect(writePdf([], CHOICES)).rejects.toThrow('no sheet');
  });
});
