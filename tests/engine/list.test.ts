import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import type { ListEdit } from '../../src/plan/records/statements.ts';
import { type Line, PIECE_FAMILIES } from '../../src/report/piece.ts';
import { demoNames, demoPlan } from './demo-file.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const linesOf = (plan: Plan): readonly Line[] => evaluate(plan, AFTER).lines;

describe.each(demoNames)('the list of %s', (name) => {
  const report = evaluate(demoPlan(name), AFTER);
  const tubes = report.lines.filter((l) => l.family === 'tube');

  test('has every piece on a line, once', () => {
    expect(report.lines.flatMap((l) => l.at)).toHaveLength(report.pieces.length);
    expect(new Set(report.lines.map((l) => l.key)).size).toBe(report.lines.length);
    for (const line of report.lines.filter((l) => l.unit === 'each')) {
      const pieces = report.pieces.filter(
        (p) => p.kind === line.piece && p.size === line.size && p.joining === line.joining,
      );
      const same = pieces.filter((p) => p.unresolved === line.unresolved);
      expect(line.quantity).toBe(same.reduce((sum, p) => sum + p.amount, 0));
    }
  });

  test('has as much tube as new legs are long, never less', () => {
    const plan = demoPlan(name);
    const fresh = report.legs.filter((l) => plan.legs[l.leg]?.option === 'A');
    const metres = fresh.reduce((sum, l) => sum + l.lengthMm.lo, 0) / 1000;
    const listed = tubes.reduce((sum, l) => sum + l.quantity, 0);
    expect(listed).toBeGreaterThanOrEqual(metres - 1e-6);
    expect(listed).toBeLessThanOrEqual(metres + 0.1 * tubes.length);
  });

  test('asks for whole lengths that hold what is drawn', () => {
    for (const line of tubes) {
      const [, count, each] = /^(\d+) lengths? of (\d+(?:\.\d+)?) m$/.exec(line.asked) ?? [];
      if (count === undefined) continue;
      expect(Number(count) * Number(each)).toBeGreaterThanOrEqual(line.quantity);
      expect((Number(count) - 1) * Number(each)).toBeLessThan(line.quantity);
    }
  });

  test('stands in the order of a counter, largest size first', () => {
    const families = report.lines.map((l) => PIECE_FAMILIES.indexOf(l.family));
    expect([...families].sort((a, b) => a - b)).toEqual(families);
    const copper = tubes.filter((l) => l.piece === 'tube-copper').map((l) => Number(l.size));
    expect([...copper].sort((a, b) => b - a)).toEqual(copper);
  });

  test('says what it cannot settle, and never with a quantity that could be bought by mistake', () => {
    for (const line of report.lines) {
      expect(line.quantity).toBeGreaterThanOrEqual(0);
      if (line.unresolved === null) expect(line.quantity).toBeGreaterThan(0);
      else expect(line.unresolved.length).toBeGreaterThan(8);
    }
  });
});

describe('a line changed by hand', () => {
  const drawn = linesOf(demoPlan('flat')).find((l) => l.family === 'support' && l.quantity > 1);
  if (!drawn) throw new Error('no clips are drawn');
  const edit = (change: Partial<ListEdit> = {}): ListEdit => ({
    id: 'e',
    option: 'A',
    piece: drawn.piece,
    size: drawn.size,
    joining: drawn.joining,
    madeOn: drawn.quantity,
    quantity: 99,
    note: 'two boxes',
    ...change,
  });
  const withEdit = (change?: Partial<ListEdit>): readonly Line[] => {
    const plan = demoPlan('flat');
    plan.listEdits.e = edit(change);
    return linesOf(plan);
  };
  const same = (lines: readonly Line[]): Line | undefined => lines.find((l) => l.key === drawn.key);

  test('keeps what the drawing gives beside it', () => {
    const line = same(withEdit());
    expect(line?.quantity).toBe(drawn.quantity);
    expect(line?.edited).toEqual({ quantity: 99, madeOn: drawn.quantity, note: 'two boxes', moved: false });
  });

  test('says that the drawing has moved since', () => {
    expect(same(withEdit({ madeOn: drawn.quantity - 1 }))?.edited?.moved).toBe(true);
  });

  test('belongs to its option alone', () => {
    const plan = demoPlan('flat');
    plan.options.B = { id: 'B', name: 'B', note: '', fates: {} };
    plan.listEdits.e = edit({ option: 'B' });
    expect(same(linesOf(plan))?.edited).toBeNull();
  });

  test('of what the drawing no longer has stays, at nothing, until it is taken back', () => {
    const lost = withEdit({ piece: 'union', size: '22', joining: 'compression' }).filter((l) => l.piece === 'union');
    expect(lost.map((l) => [l.quantity, l.edited?.quantity, l.edited?.moved])).toEqual([[0, 99, true]]);
    expect(lost[0]?.note).toContain('no longer');
  });
});
