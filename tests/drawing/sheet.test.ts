import { describe, expect, test } from 'vitest';
import type { Prim, TextPrim } from '../../src/drawing/paint/prim.ts';
import { issueSheets } from '../../src/drawing/sheet/issue.ts';
import { layoutOf, PAPERS, type Paper, paperOf } from '../../src/drawing/sheet/paper.ts';
import { barPieceM } from '../../src/drawing/sheet/scale-cell.ts';
import type { Sheet } from '../../src/drawing/sheet/sheet.ts';
import { sheetChoices } from '../../src/drawing/sheet/sheet-kinds.ts';
import { sheetSvg } from '../../src/drawing/sheet/sheet-svg.ts';
import { sheetsPage } from '../../src/drawing/sheet/sheets-page.ts';
import { wrap, wrapTo } from '../../src/drawing/sheet/wrap.ts';
import { textWidth } from '../../src/drawing/text/measure.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';
import { sheetJob } from './sheet-job.ts';
import { AFTER, page, room, run, wall } from './small-plan.ts';

const paper = (id: string): Paper => paperOf(id) ?? PAPERS[0]!;
const prims = (sheet: Sheet): Prim[] => sheet.parts.flatMap((p) => [...p.prims]);
const isText = (p: Prim): p is TextPrim => p.p === 'text';
const said = (sheet: Sheet): string =>
  prims(sheet)
    .filter(isText)
    .map((p) => p.text)
    .join('\n');

/** Boxes of the closed or filled paths of a sheet. */
function boxes(sheet: Sheet): { w: number; h: number; fill: string | undefined }[] {
  return prims(sheet).flatMap((p) => {
    if (p.p !== 'path') return [];
    const at = p.path.flatMap((s) => (s.c === 'Z' ? [] : [[s.x, s.y] as const]));
    const [xs, ys] = [at.map(([x]) => x), at.map(([, y]) => y)];
    return [{ w: Math.max(...xs) - Math.min(...xs), h: Math.max(...ys) - Math.min(...ys), fill: p.fill }];
  });
}

function house(): Plan {
  const plan = room(page());
  run(plan, 'gas', [
    [100, 100, 300],
    [3900, 100, 300],
  ]);
  return plan;
}

/** A wall so long that it needs several sheets. */
function long(): Plan {
  const plan = page();
  wall(plan, 'long', [0, 0], [20_000, 0]);
  run(plan, 'gas', [
    [200, 200, 300],
    [19_800, 200, 300],
  ]);
  return plan;
}

const issue = (plan: Plan, keys: readonly string[], scales: Record<string, number> = {}, on = 'A4-across'): Sheet[] =>
  issueSheets(sheetJob(plan, AFTER), { paper: paper(on), keys, scales });

describe('scale', () => {
  test.each([10, 20, 50, 100, 200, 500])('at 1:%i the bar has round pieces and room', (scale) => {
    const piece = barPieceM(scale);
    expect((4 * piece * 1000) / scale).toBeLessThanOrEqual(80);
    expect((4 * piece * 1000) / scale).toBeGreaterThanOrEqual(40);
  });

  test.each(PAPERS.map((p) => p.id))('a wall and the bar on %s are as long as it says', (id) => {
    const plan = page();
    wall(plan, 'w', [0, 0], [1000, 0]);
    for (const scale of [20, 50, 100]) {
      const [sheet] = issue(plan, ['plan:S'], { 'plan:S': scale }, id);
      if (!sheet) throw new Error('no sheet');
      const walls = boxes(sheet).filter(
        (b) => Math.abs(b.w - 1000 / scale) < 1e-6 && Math.abs(b.h - 100 / scale) < 1e-6,
      );
      expect(walls.length).toBeGreaterThan(0);
      const [, m, mm] =
        new RegExp(`Scale 1:${scale}. Check the bar after printing: ([\\d.]+) m is ([\\d.]+) mm`).exec(said(sheet)) ??
        [];
      expect(Number(mm)).toBeCloseTo((Number(m) * 1000) / scale, 6);
      const bars = boxes(sheet).filter((b) => Math.abs(b.w - Number(mm) / 4) < 1e-6 && Math.abs(b.h - 1.2) < 1e-6);
      expect(bars.map((b) => b.fill)).toEqual(['#000000', '#FFFFFF', '#000000', '#FFFFFF']);
    }
  });

  test('is the largest usual one that has room, on the paper there is', () => {
    const scaleOn = (plan: Plan, id: string) => issue(plan, ['plan:S'], {}, id)[0]?.head.scale;
    expect(scaleOn(house(), 'A4-across')).toBe(50);
    expect(scaleOn(long(), 'A4-across')).toBe(200);
    expect(scaleOn(long(), 'A3-across')).toBe(100);
  });
});

describe('a drawing without room at its scale', () => {
  const sheets = issue(long(), ['plan:S', 'basis'], { 'plan:S': 50 });
  const drawn = sheets.filter((s) => s.key.startsWith('plan:'));

  test('is parted, never made smaller', () => {
    expect(drawn.length).toBeGreaterThan(2);
    expect(drawn.every((s) => s.head.scale === 50)).toBe(true);
    expect(drawn.map((s) => s.head.title)).toEqual(
      drawn.map((_, i) => `Ground floor, part ${i + 1} of ${drawn.length}`),
    );
  });

  test('has match lines that name the sheet it goes on on', () => {
    expect(said(drawn[0]!)).toContain('match line: sheet 2');
    expect(said(drawn[0]!)).not.toContain('match line: sheet 1');
    expect(said(drawn[1]!)).toContain('match line: sheet 1');
    expect(said(drawn[1]!)).toContain('match line: sheet 3');
  });

  test('shows in each part what lies past its match line, and nothing beyond its room', () => {
    for (const s of drawn) {
      const clip = s.parts.find((p) => p.clip !== null)?.clip;
      expect(clip).toBeDefined();
      expect((clip?.x ?? 0) + (clip?.w ?? 0)).toBeLessThanOrEqual(297 - 10);
    }
  });
});

describe('the title block', () => {
  const plan = house();
  plan.name = 'Flat 3';
  plan.job.owner = 'Owner of the sheets';
  plan.job.issue = { number: 'K-07', revision: 'B', reason: 'boiler higher', createdBy: 'R. Pencil', on: '2026-03-02' };

  test('tells every field; what nobody told prints as not told', () => {
    const [told] = issue(plan, ['plan:S']);
    const text = said(told!);
    for (const word of [
      'Flat 3',
      'Owner of the sheets',
      'K-07',
      'boiler higher',
      'R. Pencil',
      '2026-03-02',
      'route plan',
    ]) {
      expect(text).toContain(word);
    }
    expect(text).toContain('approved by\nnot told');
    const [bare] = issue(house(), ['plan:S']);
    expect(said(bare!)).toContain('legal owner of the sheet\nnot told');
    expect(said(bare!)).toContain('number not told');
    expect(said(bare!)).toContain('date of issue\n2026-05-04');
  });

  test('stands on every sheet with its number, the caution and the cases', () => {
    const job = sheetJob(demo('flat'), AFTER);
    const sheets = issueSheets(job, { paper: paper('A4-across'), keys: sheetChoices(job).map((c) => c.key) });
    expect(sheets.length).toBeGreaterThan(6);
    sheets.forEach((s, i) => {
      expect(said(s)).toContain(`sheet ${i + 1} of ${sheets.length}`);
      expect(said(s)).toContain('Limits compared, not approved: the registered engineer decides.');
      expect(said(s)).toContain('after the work, option A');
      expect(said(s)).not.toMatch(/[→≤≥≈]/);
    });
  });
});

describe('findings on sheets', () => {
  const flat = structuredClone(demo('flat'));
  const { report } = sheetJob(flat, AFTER);
  const stop = report.findings.find((f) => f.outcome === 'stop');
  if (!stop) throw new Error('the flat has no stop');
  flat.acknowledgements.k1 = {
    id: 'k1',
    key: stop.key,
    note: 'moved on site',
    by: 'R. Pencil',
    on: '2026-05-03',
    found: null,
    wanted: null,
  };
  const sheets = issue(flat, ['plan:B', 'findings']);

  test('a stop that was seen prints as stop, with who, when and why beside it', () => {
    const text = sheets
      .filter((s) => s.key.startsWith('findings'))
      .map(said)
      .join('\n')
      .replaceAll('\n', ' ');
    expect(text).toContain(`Stop: ${stop.title}`);
    expect(text).toContain('Seen by R. Pencil, 2026-05-03: moved on site');
    for (const f of report.findings) expect(text).toContain(f.title.slice(0, 30));
  });

  test('the plan has the worst of them, and where the rest is', () => {
    expect(said(sheets[0]!)).toContain('To settle');
    expect(said(sheets[0]!)).toMatch(/S1/);
    expect(said(sheets[0]!)).toMatch(/\d+ more: sheet 2/);
  });
});

describe('print', () => {
  const job = sheetJob(demo('two-storey'), AFTER);
  const keys = sheetChoices(job).map((c) => c.key);

  test.each(PAPERS.map((p) => p.id))(
    'on %s is black, white and two greys, in the frame, in letters that can be read',
    (id) => {
      const layout = layoutOf(paper(id));
      for (const sheet of issueSheets(job, { paper: paper(id), keys })) {
        for (const part of sheet.parts) {
          for (const p of part.prims) {
            const inks = p.p === 'text' ? [p.ink, p.halo?.ink] : [p.fill, p.stroke?.ink];
            for (const ink of inks.filter((i) => i !== undefined)) {
              expect(['#000000', '#FFFFFF', '#C9C9C9', '#EFEFEF']).toContain(ink);
            }
            if (p.p !== 'text') continue;
            const inMark = /^([SCN?]\d+|\+\d+)$/.test(p.text);
            if (!inMark) expect(p.size, p.text).toBeGreaterThanOrEqual(1.6);
            if (part.clip || p.turnDeg !== 0) continue;
            const w = textWidth(p.text, p.size, p.weight);
            const left = p.x - (p.align === 'left' ? 0 : p.align === 'middle' ? w / 2 : w);
            expect(left, `${sheet.head.title}: ${p.text}`).toBeGreaterThanOrEqual(layout.frame.x);
            expect(left + w, `${sheet.head.title}: ${p.text}`).toBeLessThanOrEqual(
              layout.frame.x + layout.frame.w + 0.01,
            );
            expect(p.y, `${sheet.head.title}: ${p.text}`).toBeLessThanOrEqual(layout.frame.y + layout.frame.h);
          }
        }
      }
    },
  );

  test('lists every piece once', () => {
    const text = issueSheets(job, { paper: paper('A4-across'), keys: ['list'] })
      .map(said)
      .join('\n');
    const rows = job.list.flatMap((g) => g.rows);
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) expect(text).toContain(row.what.slice(0, 24));
  });

  test('gives the same bytes for the same job, true in mm, with nothing that leads outside', () => {
    const made = () => sheetsPage('Flat', issueSheets(job, { paper: paper('A3-upright'), keys }));
    const page = made();
    expect(made()).toBe(page);
    expect(page).toContain('size:297mm 420mm');
    expect(page).not.toMatch(/(href|src|url\()/);
    const [first] = issueSheets(job, { paper: paper('A3-upright'), keys });
    expect(sheetSvg(first!, true)).toContain('width="297mm" height="420mm"');
  });

  test('of a job with nothing drawn still has its findings and basis', () => {
    const empty = sheetJob(page(), AFTER);
    expect(sheetChoices(empty).map((c) => c.key)).toEqual(['plan:S', 'findings', 'basis']);
    const sheets = issueSheets(empty, { paper: paper('A4-across'), keys: ['plan:S', 'findings', 'basis'] });
    expect(sheets.map((s) => s.key)).toEqual(['findings', 'basis']);
    expect(said(sheets[0]!)).toContain('Nothing was found');
  });
});

describe('lines of text', () => {
  test('are no wider than they may be and lose no word', () => {
    const text = 'Pipe moves as it warms and a wall does not; bare pipe through a wall is worn';
    const lines = wrap(text, 2.5, 400, 30);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(textWidth(line, 2.5, 400)).toBeLessThanOrEqual(30);
  });

  test('cut a word that is longer than the line, and end in dots where some are left out', () => {
    expect(wrap('W'.repeat(40), 2.5, 400, 30).join('')).toBe('W'.repeat(40));
    const [last] = wrapTo('one two three four five six seven', 2.5, 400, 14, 1);
    expect(last).toMatch(/\.\.\.$/);
    expect(textWidth(last ?? '', 2.5, 400)).toBeLessThanOrEqual(14);
  });
});
