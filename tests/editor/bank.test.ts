import { describe, expect, test } from 'vitest';
import { readBank } from '../../src/network/bank/read-bank.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { leastGapOf } from '../network/bank-drawn.ts';
import { bytesOf, endsOf, FIVE, lineOf, membersOf, place, planOf, radiusOf, withBoiler } from './bank-job.ts';

const at = (x: number, y: number, z: number): Xyz => ({ x, y, z });

/** Five runs through the ceiling and down beside the boiler. */
function laid() {
  const { editor, boiler } = withBoiler(at(3000, 0, 1100));
  const path = [at(0, 500, 2500), at(2300, 500, 2500)].map(place);
  const out = editor.run('bank.lay', { members: membersOf(FIVE), spacingMm: 75, path, end: { point: boiler } });
  if (!out.ok) throw new Error(out.why);
  const [group, ...runs] = out.made as string[];
  return { editor, boiler, group: group as string, runs };
}

const gapOf = (plan: ReturnType<typeof planOf>, runs: readonly string[]) =>
  leastGapOf(
    runs.map((r) => lineOf(plan, r)),
    runs.map((r) => radiusOf(plan, r)),
  );

describe('a bank of runs', () => {
  test('lands each run on its own connection, in the order of the tails, and none meets another', () => {
    const { editor, group, runs } = laid();
    const plan = planOf(editor);
    const ends = Object.fromEntries(runs.map((r) => [plan.runs[r]?.service, endsOf(plan, r)]));
    expect(ends).toEqual({
      gas: ['open', 'gas'],
      heatingFlow: ['open', 'flow'],
      heatingReturn: ['open', 'return'],
      cold: ['open', 'cold'],
      hot: ['open', 'hot'],
    });
    expect(gapOf(plan, runs)).toBeGreaterThan(25);
    const order = plan.groups[group]?.members.map((r) => plan.runs[r]?.service);
    expect([order, [...(order ?? [])].reverse()]).toContainEqual([
      'heatingFlow',
      'hot',
      'gas',
      'cold',
      'heatingReturn',
    ]);
    expect(danglingReferences(plan)).toEqual([]);
    expect(editor.store.getState().history.undo).toHaveLength(2);
  });

  test('is read back as it was told', () => {
    const { editor, group } = laid();
    const read = readBank(planOf(editor), group);
    expect(read?.members).toHaveLength(5);
    expect(read?.members.map((m) => [m.start.is, m.end.is])).toEqual(Array(5).fill(['open', 'tail']));
    expect(read?.path[0]).toMatchObject({ x: 0, y: 500, z: 2500 });
  });

  test.each([
    ['spacing', { spacingMm: 100 }],
    ['height', { height: { from: 'floor', of: 'ground', mm: 2250 } }],
  ])('keeps its ends and stays clear when its %s is changed', (_, change) => {
    const { editor, group, runs } = laid();
    const before = planOf(editor);
    expect(editor.run('bank.set', { group, ...change })).toMatchObject({ ok: true });
    const plan = planOf(editor);
    expect(runs.map((r) => endsOf(plan, r))).toEqual(runs.map((r) => endsOf(before, r)));
    expect(gapOf(plan, runs)).toBeGreaterThan(25);
    expect(editor.undo().ok).toBe(true);
    expect(bytesOf(planOf(editor))).toBe(bytesOf(before));
  });

  test('a new spacing is that between neighbours, about the same middle', () => {
    const { editor, group } = laid();
    editor.run('bank.set', { group, spacingMm: 120 });
    const plan = planOf(editor);
    const ys = plan.groups[group]?.members.map((r) => lineOf(plan, r)[0]?.y ?? 0) ?? [];
    expect(ys.slice(1).map((y, i) => Math.abs(y - (ys[i] ?? 0)))).toEqual([120, 120, 120, 120]);
    expect(ys.reduce((a, b) => a + b, 0) / 5).toBeCloseTo(500, 6);
  });

  test('another order lands on the same connections', () => {
    const { editor, group, runs } = laid();
    const before = planOf(editor);
    const order = [...(before.groups[group]?.members ?? [])];
    [order[0], order[1]] = [order[1] as string, order[0] as string];
    expect(editor.run('bank.set', { group, order })).toMatchObject({ ok: true });
    const plan = planOf(editor);
    expect(plan.groups[group]?.members).toEqual(order);
    expect(runs.map((r) => endsOf(plan, r))).toEqual(runs.map((r) => endsOf(before, r)));
    expect(gapOf(plan, runs)).toBeGreaterThan(0);
    const ys = order.map((r) => lineOf(plan, r)[0]?.y ?? 0);
    expect(ys.slice(1).every((y, i) => Math.abs(y - (ys[i] ?? 0)) > 74)).toBe(true);
  });

  test('one is taken out, steps aside and keeps its end', () => {
    const { editor, group, runs } = laid();
    const before = planOf(editor);
    const run = before.groups[group]?.members[0] as string;
    expect(editor.run('bank.peel', { group, run, asideMm: 150 })).toMatchObject({ ok: true });
    const plan = planOf(editor);
    expect(plan.groups[group]?.members).toEqual(before.groups[group]?.members.slice(1));
    expect(endsOf(plan, run)).toEqual(endsOf(before, run));
    expect(Math.abs((lineOf(plan, run)[0]?.y ?? 0) - (lineOf(before, run)[0]?.y ?? 0))).toBeCloseTo(150, 6);
    for (const r of runs) if (r !== run) expect(lineOf(plan, r)).toEqual(lineOf(before, r));
    expect(gapOf(plan, runs)).toBeGreaterThan(0);
  });

  test('pipes that run downhill are laid by themselves, and that is said', () => {
    const { editor } = withBoiler(at(3000, 0, 1100));
    const path = [at(0, 500, 2500), at(2000, 500, 2500)].map(place);
    const out = editor.run('bank.lay', { members: membersOf(['gas', 'condensate']), spacingMm: 75, path });
    expect(out).toMatchObject({ ok: false, why: expect.stringMatching(/condensate .*fall.*by itself/) });
  });

  test('pipes that would touch are refused with the spacing they need', () => {
    const { editor } = withBoiler(at(3000, 0, 1100));
    const path = [at(0, 500, 2500), at(2000, 500, 2500)].map(place);
    const out = editor.run('bank.lay', { members: membersOf(['gas', 'heatingFlow']), spacingMm: 20, path });
    expect(out).toMatchObject({ ok: false, why: expect.stringContaining('22 between their middles') });
  });

  test('goes on from its open ends, and takes the order of the tails when it ends there', () => {
    const { editor, boiler } = withBoiler(at(3000, 0, 1100));
    const path = [at(0, 3000, 2500), at(1500, 3000, 2500)].map(place);
    const out = editor.run('bank.lay', { members: membersOf(FIVE), spacingMm: 75, path });
    if (!out.ok) throw new Error(out.why);
    const [group, ...runs] = out.made as string[];
    expect(editor.run('bank.extend', { group, path: [place(at(1500, 500, 2500))] })).toMatchObject({ ok: true });
    expect(editor.run('bank.extend', { group, path: [], end: { point: boiler } })).toMatchObject({ ok: true });
    const plan = planOf(editor);
    expect(runs.map((r) => endsOf(plan, r)[1])).toEqual(['gas', 'flow', 'return', 'cold', 'hot']);
    expect(gapOf(plan, runs)).toBeGreaterThan(20);
    const read = readBank(plan, group as string);
    expect(read?.members).toHaveLength(5);
    expect(read?.path.length).toBeGreaterThanOrEqual(3);
    expect(editor.run('bank.extend', { group, path: [place(at(0, 0, 100))] })).toMatchObject({
      ok: false,
      why: 'The bank has no open ends there to go on from.',
    });
  });

  test('starts at the tails of a boiler and can be deleted whole', () => {
    const { editor, boiler } = withBoiler(at(3000, 0, 1100));
    const start = planOf(editor);
    const path = [at(2300, 500, 200), at(2300, 3000, 200), at(5000, 3000, 200)].map(place);
    const out = editor.run('bank.lay', { members: membersOf(FIVE), spacingMm: 75, path, start: { point: boiler } });
    if (!out.ok) throw new Error(out.why);
    const [group, ...runs] = out.made as string[];
    const plan = planOf(editor);
    expect(runs.map((r) => endsOf(plan, r))).toEqual([
      ['gas', 'open'],
      ['flow', 'open'],
      ['return', 'open'],
      ['cold', 'open'],
      ['hot', 'open'],
    ]);
    expect(gapOf(plan, runs)).toBeGreaterThan(20);
    expect(editor.run('bank.delete', { group })).toMatchObject({ ok: true });
    expect(planOf(editor)).toEqual(start);
  });

  test('heights keep the reference the bank was told from', () => {
    const { editor } = withBoiler(at(3000, 0, 1100));
    const height = { from: 'ceiling', of: 'ground', mm: 100 };
    const path = [
      { storey: 'ground', x: 0, y: 0, height },
      { storey: 'ground', x: 2000, y: 0, height },
    ];
    const out = editor.run('bank.lay', { members: membersOf(['cold', 'hot']), spacingMm: 75, row: 'upright', path });
    if (!out.ok) throw new Error(out.why);
    const mm = Object.values(planOf(editor).nodes).flatMap((n) => (n.place.on === 'storey' ? [n.place.height] : []));
    expect(mm.map((h) => h.from)).toEqual(Array(4).fill('ceiling'));
    expect([...new Set(mm.map((h) => h.mm))].sort((a, b) => a - b)).toEqual([62.5, 137.5]);
  });
});
