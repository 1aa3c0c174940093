import { describe, expect, test } from 'vitest';
import { nextOptionName } from '../../src/editor/later/option-things.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { findingKey } from '../../src/report/finding.ts';
import { demoNames, demoPlan } from '../engine/demo-file.ts';
import { blank, editorOf } from './hand.ts';

const built = (option: string) => ({ option, when: 'after' }) as const;

/** A demo plan in which something was said of its option A: a finding, a line of the list, a limit; and a bank of two. */
function said(name: string): Plan {
  const plan = demoPlan(name);
  const editor = editorOf(plan);
  editor.setCase(built('A'));
  const report = evaluate(plan, built('A'));
  const finding = report.findings.find((f) => f.ids.some((id) => plan.runs[id]?.option === 'A'));
  const line = report.lines[0];
  const runs = Object.values(plan.runs).filter((r) => r.option === 'A');
  const point = Object.values(plan.points).find((p) => p.option === 'A');
  if (!finding || !line || !runs[0] || !runs[1] || !point) throw new Error(`${name} has nothing to say`);
  const ran = [
    editor.run('acknowledgement.set', {
      key: finding.key,
      note: 'seen',
      by: '',
      on: null,
      found: finding.found && { lo: finding.found.lo, hi: finding.found.hi, unit: finding.found.unit },
      wanted: null,
    }),
    editor.run('listEdit.set', {
      option: 'A',
      piece: line.piece,
      size: line.size,
      joining: line.joining,
      madeOn: line.quantity,
      quantity: 99,
      note: 'spare',
    }),
    editor.run('override.set', {
      limit: 'condensate-fall',
      scope: point.id,
      value: 30,
      unit: 'mm/m',
      note: 'its sheet',
      page: '4',
    }),
    editor.run('group.set', { name: 'bank', members: [runs[0].id, runs[1].id], spacingMm: 60 }),
  ];
  expect(ran.filter((r) => !r.ok)).toEqual([]);
  return editor.store.getState().plan;
}

/** A report as text, with the ids of the copy written as those of the original. */
function asFirst(plan: Plan, text: string, copied: string): string {
  const of = (option: string) =>
    (['walls', 'openings', 'voids', 'points', 'runs', 'nodes', 'legs', 'stretches', 'items'] as const).map((map) =>
      Object.values(plan[map])
        .filter((r) => r.option === option)
        .map((r) => r.id),
    );
  const back = new Map<string, string>([[copied, 'A']]);
  const first = of('A');
  of(copied).forEach((ids, map) => {
    expect(ids).toHaveLength(first[map]?.length ?? -1);
    for (const [i, id] of ids.entries()) back.set(id, first[map]?.[i] ?? '');
  });
  const edits = Object.values(plan.listEdits);
  const [edit, other] = [edits.find((e) => e.option === 'A'), edits.find((e) => e.option === copied)];
  if (edit && other) back.set(other.id, edit.id);
  const own = Object.values(plan.overrides);
  if (own[0] && own[1]) back.set(own[1].id, own[0].id);
  return text.replace(/[\w-]+/g, (word) => back.get(word) ?? word);
}

/** Lists in an order of their own: where nothing else decides, the engine goes by ids, and the copy has others. */
const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted).sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));
  // The key of a finding names its things in the order of their ids.
  if (typeof value === 'string') return value.replace(/(?<=\|)[^|]+(?=\|)/, (ids) => ids.split(',').sort().join(','));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, sorted(v)]));
};

describe('an option that is copied', () => {
  test.each(demoNames)('%s: says the same of the copy but for ids, and deletes to the same bytes', (name) => {
    const plan = said(name);
    const bytes = JSON.stringify(plan);
    const editor = editorOf(plan);
    editor.setCase(built('A'));
    const done = editor.run('option.copy', { option: 'A' });
    const [made] = done.ok ? done.made : [];
    if (made === undefined) throw new Error('nothing was made');
    const grown = editor.store.getState().plan;
    expect(editor.store.getState().history.undo).toHaveLength(1);
    expect(danglingReferences(grown)).toEqual([]);
    expect(grown.options[made]?.fates).toEqual(plan.options.A?.fates);
    expect(Object.keys(grown.groups)).toHaveLength(2);
    expect(Object.values(grown.acknowledgements)).toHaveLength(2);

    const first = evaluate(grown, built('A'));
    const copy = evaluate(grown, built(made));
    expect(copy.counts).toEqual(first.counts);
    const read = sorted(JSON.parse(asFirst(grown, JSON.stringify(copy), made))) as typeof first;
    const wanted = sorted(JSON.parse(JSON.stringify(first))) as typeof first;
    expect(read.sections).toEqual(wanted.sections);
    expect(read.lines).toEqual(wanted.lines);
    expect(read.findings).toEqual(wanted.findings);
    expect(read.legs).toEqual(wanted.legs);
    expect(read).toEqual(wanted);

    expect(editor.run('option.delete', { option: made }).ok).toBe(true);
    expect(JSON.stringify(editor.store.getState().plan)).toBe(bytes);
    editor.undo();
    expect(editor.store.getState().plan).toEqual(grown);
    editor.undo();
    expect(JSON.stringify(editor.store.getState().plan)).toBe(bytes);
  });

  test('changes by itself: a leg moved in the copy leaves the first one where it is', () => {
    const editor = editorOf(demoPlan('flat'));
    const done = editor.run('option.copy', { option: 'A', name: 'Low' });
    const made = done.ok ? (done.made[0] ?? '') : '';
    editor.setCase(built(made));
    const { plan } = editor.store.getState();
    const was = evaluate(plan, built('A')).legs;
    const moved = Object.values(plan.legs)
      .filter((l) => l.option === made)
      .some((leg) => editor.run('leg.move', { leg: leg.id, by: { x: 0, y: 120, z: 0 } }).ok);
    expect(moved).toBe(true);
    const now = editor.store.getState().plan;
    expect(evaluate(now, built('A')).legs).toEqual(was);
    for (const node of Object.values(plan.nodes)) if (node.option === 'A') expect(now.nodes[node.id]).toEqual(node);
    expect(now.options[made]?.name).toBe('Low');
  });

  test('of nothing keeps everything that was surveyed', () => {
    const editor = editorOf(demoPlan('semi'));
    const done = editor.run('option.copy', { option: null });
    const made = done.ok ? (done.made[0] ?? '') : '';
    const { plan } = editor.store.getState();
    expect(plan.options[made]).toEqual({ id: made, name: 'B', note: '', fates: {} });
    expect(Object.values(plan.runs).filter((r) => r.option === made)).toEqual([]);
  });
});

describe('an option that is deleted', () => {
  test('takes what is new in it and leaves the survey, and the last one may go', () => {
    const editor = editorOf(said('semi'));
    const { plan } = editor.store.getState();
    expect(editor.run('option.delete', { option: 'A' }).ok).toBe(true);
    const left = editor.store.getState().plan;
    expect(left.options).toEqual({});
    expect(left.acknowledgements).toEqual({});
    expect(left.listEdits).toEqual({});
    expect(left.overrides).toEqual({});
    expect(left.groups).toEqual({});
    for (const map of ['walls', 'points', 'runs', 'nodes', 'legs', 'stretches', 'items'] as const) {
      expect(Object.keys(left[map])).toEqual(
        Object.values(plan[map])
          .filter((r) => r.option === null)
          .map((r) => r.id),
      );
    }
    expect(danglingReferences(left)).toEqual([]);
    expect(editor.run('option.delete', { option: 'A' })).toEqual({ ok: false, why: 'That option is no longer there.' });
  });

  test('leaves a node that surveyed pipe ends at, and lone surveyed ends', () => {
    const plan = demoPlan('semi');
    const leg = Object.values(plan.legs).find((l) => l.option === null);
    const node = leg && plan.nodes[leg.a];
    if (!node) throw new Error('no surveyed leg');
    plan.nodes[node.id] = { ...node, option: 'A' };
    const editor = editorOf(plan);
    expect(editor.run('option.delete', { option: 'A' }).ok).toBe(true);
    const left = editor.store.getState().plan;
    expect(left.nodes[node.id]).toEqual({ ...node, option: null });
    expect(left.legs[leg.id]).toEqual(leg);
  });
});

test('names follow one another, and skip letters that look like figures', () => {
  const named = (...names: string[]) => ({
    options: Object.fromEntries(names.map((name, i) => [`o${i}`, { id: `o${i}`, name, note: '', fates: {} }])),
  });
  expect(nextOptionName(blank())).toBe('B');
  expect(nextOptionName(named())).toBe('A');
  expect(nextOptionName(named('A', 'c'))).toBe('B');
  expect(nextOptionName(named(...'ABCDEFGH'))).toBe('J');
  expect(nextOptionName(named(...'ABCDEFGHJKLMNPQRSTUVWXYZ'))).toBe('A2');
});

test('a key of a finding keeps the order of its ids in a copy', () => {
  const editor = editorOf(said('flat'));
  const done = editor.run('option.copy', { option: 'A' });
  const made = done.ok ? (done.made[0] ?? '') : '';
  const { plan } = editor.store.getState();
  const keys = evaluate(plan, built(made)).findings.map((f) => f.key);
  const copied = Object.values(plan.acknowledgements).find((a) => a.key.endsWith(`|${made}`));
  expect(keys).toContain(copied?.key);
  const [rule = '', ids = ''] = copied?.key.split('|') ?? [];
  expect(copied?.key).toBe(findingKey(rule, ids.split(','), made));
});

test('what is looked at is never an option that is gone', () => {
  const editor = editorOf(demoPlan('extension'));
  editor.setCase(built('C'));
  editor.run('option.delete', { option: 'B' });
  expect(editor.store.getState().chosen).toEqual(built('C'));
  editor.run('option.delete', { option: 'C' });
  expect(editor.store.getState().chosen).toEqual(built('A'));
  editor.run('option.delete', { option: 'A' });
  editor.run('option.delete', { option: 'D' });
  expect(editor.store.getState().chosen).toEqual({ option: null, when: 'before' });
});
