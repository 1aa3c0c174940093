import { describe, expect, test } from 'vitest';
import { evaluate, sums } from '../../src/engine/evaluate.ts';
import { demoPlan } from '../engine/demo-file.ts';
import { call } from './fake-terminal.ts';

const AFTER = { option: 'A', when: 'after' } as const;

describe('check', () => {
  test('exits 1 where some stop is found, and prints it first with place and figures', async () => {
    const { code, out, err } = await call('check', 'flat.json');
    expect([code, err]).toEqual([1, '']);
    const findings = out.split('\n').filter((line) => /^(stop|check|can't tell|note): /.test(line));
    expect(findings[0]).toMatch(
      /^stop: Cold to the boiler 22 meets heating return 22 at \(920, \d+, 400\): found -12 mm, wanted at least 25 mm/,
    );
    const { counts } = evaluate(demoPlan('flat'), AFTER);
    expect(findings).toHaveLength(counts.stop + counts.check + counts.note + counts.cantTell);
    expect(out).toContain(
      `${counts.stop} stop, ${counts.check} check, ${counts.cantTell} can't tell, ${counts.note} note\n`,
    );
    expect(out).toMatch(/^Gas drop: 0\.\d\d to 0\.\d\d mbar$/m);
    expect(out).not.toMatch(/[→≤≥≈]/);
  });

  test('exits 0 where none is', async () => {
    expect(await call('check', 'house.json')).toMatchObject({ code: 0, err: '' });
  });

  test.each([
    ['A:after', 0],
    ['A:after', 0],
    ['after', 0],
    ['before', 1],
    ['A:before', 1],
  ])('--case %s is the case it says', async (chosen, code) => {
    for (const args of [['--case', chosen], [`--case=${chosen}`]]) {
      const ran = await call('check', 'house.json', '--json', ...args);
      expect(ran.code).toBe(code);
      const when = chosen.endsWith('after') ? 'after' : 'before';
      expect(JSON.parse(ran.out).case).toEqual({ option: 'A', when });
    }
  });

  test('--json gives the findings as they are', async () => {
    const { out } = await call('check', 'flat.json', '--json');
    const { findings, counts } = evaluate(demoPlan('flat'), AFTER);
    expect(JSON.parse(out)).toEqual({ case: AFTER, counts, findings });
  });
});

describe('report', () => {
  test('is the whole report, and exits 0 whatever it says', async () => {
    const { code, out } = await call('report', 'flat.json', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(evaluate(demoPlan('flat'), AFTER));
  });
});

describe('list', () => {
  const lines = evaluate(demoPlan('flat'), AFTER).lines;

  test('as text has every line that can be asked for', async () => {
    const { code, out } = await call('list', 'flat.json');
    expect(code).toBe(0);
    for (const line of lines) expect(out).toContain(line.name);
    expect(await call('list', 'flat.json', '--text')).toMatchObject({ out });
  });

  test('as a sheet has one row a line', async () => {
    const { out } = await call('list', 'flat.json', '--csv');
    const rows = out.trim().split(/\r?\n/);
    expect(rows).toHaveLength(lines.length + 1);
    expect(rows[0]).toContain('Drawn');
  });

  test('as data is the lines of the report', async () => {
    const { out } = await call('list', 'flat.json', '--json');
    expect(JSON.parse(out)).toEqual(lines);
  });
});

describe('draw', () => {
  test.each(['plan:B', 'face:BN:right'])('%s is one SVG', async (view) => {
    const { code, out, written } = await call('draw', 'flat.json', '--view', view, '--out', 'flat.svg');
    expect([code, out]).toEqual([0, '']);
    const svg = written['flat.svg'] ?? '';
    expect(svg).toMatch(/^(<\?xml[^>]*>\s*)?<svg [^>]*>/);
    expect(svg.trim().endsWith('</svg>')).toBe(true);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    expect(svg).toContain('First-floor flat');
  });

  test('goes to the terminal without --out, the first storey in the first option', async () => {
    const { out, written } = await call('draw', 'flat.json');
    expect(written).toEqual({});
    const named = await call('draw', 'flat.json', '--view=plan:First floor', '--case=A:after', '--theme=print');
    expect(named.out).toBe(out);
  });

  test('before and after are two drawings, and so are two themes', async () => {
    const drawn = await Promise.all([
      call('draw', 'flat.json', '--case', 'before'),
      call('draw', 'flat.json', '--case', 'after'),
      call('draw', 'flat.json', '--theme', 'night'),
    ]);
    expect(new Set(drawn.map((d) => d.out)).size).toBe(3);
  });
});

describe('sum', () => {
  test('--list --json has the same keys for every sum, and every sum', async () => {
    const { code, out } = await call('sum', '--list', '--json');
    expect(code).toBe(0);
    const all: Record<string, unknown>[] = JSON.parse(out);
    expect(all.map((s) => s.id)).toEqual([...sums.keys()]);
    for (const sum of all) {
      expect(Object.keys(sum)).toEqual(['id', 'title', 'topic', 'inputs', 'example']);
      for (const input of sum.inputs as Record<string, unknown>[]) {
        expect(Object.keys(input)).toEqual(expect.arrayContaining(['key', 'label', 'kind', 'unit', 'required']));
      }
    }
  });

  test('--list names every sum and what it asks for', async () => {
    const { out } = await call('sum', '--list');
    for (const sum of sums.values()) {
      expect(out).toContain(`${sum.id}: ${sum.title}`);
      for (const input of sum.inputs) expect(out).toContain(input.key);
    }
  });

  test.each([...sums.values()])('$id works out its own example', async (sum) => {
    const words = Object.entries(sum.example.values).map(([key, value]) => `${key}=${value}`);
    const { code, out } = await call('sum', sum.id, ...words);
    expect(code).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines.length).toBeGreaterThan(2);
    const cited = sum.work(sum.example.values).steps.flatMap((s) => s.cites);
    for (const { source, clause } of cited) expect(out).toContain(`${source}, ${clause}`);
    expect(lines.at(-1)).not.toMatch(/can't tell/);
    const asData = JSON.parse((await call('sum', sum.id, ...words, '--json')).out);
    expect(Object.keys(asData)).toEqual(expect.arrayContaining(['title', 'steps', 'result', 'missing', 'assumed']));
    const middle = asData.result.value ?? (asData.result.lo + asData.result.hi) / 2;
    expect(Math.abs(middle - sum.example.result)).toBeLessThanOrEqual(sum.example.within);
  });
});
