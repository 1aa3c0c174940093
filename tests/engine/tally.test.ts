import { describe, expect, test } from 'vitest';
import { differences, evaluate, tally } from '../../src/engine/evaluate.ts';
import { coveredMm } from '../../src/engine/tally/hidden-figures.ts';
import { matched } from '../../src/engine/tally/pairs.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import { between, exact } from '../../src/report/quantity.ts';
import { sayTally, type Tally, type TallyFigure, tallyRows } from '../../src/report/tally.ts';
import '../../src/editor/later/later.ts';
import { editorOf } from '../editor/hand.ts';
import { demoNames, demoPlan } from './demo-file.ts';

const built = (option: string): Case => ({ option, when: 'after' });
const BEFORE: Case = { option: 'A', when: 'before' };

const of = (t: Tally, id: string): TallyFigure => {
  const found = t.figures.find((f) => f.id === id);
  if (!found) throw new Error(`no figure ${id}`);
  return found;
};

/** A plan with a copy of its option A, changed as told. */
function copied(name: string, change: (plan: Plan, made: string) => void = () => undefined) {
  const editor = editorOf(demoPlan(name));
  const done = editor.run('option.copy', { option: 'A' });
  const made = done.ok ? (done.made[0] ?? '') : '';
  const plan = structuredClone(editor.store.getState().plan);
  change(plan, made);
  return { plan, made };
}

describe('the figures of a case', () => {
  test.each(demoNames)('%s: are those of its report', (name) => {
    const plan = demoPlan(name);
    const report = evaluate(plan, built('A'));
    const t = tally(plan, built('A'));
    expect(new Set(t.figures.map((f) => f.id)).size).toBe(t.figures.length);
    for (const outcome of ['stop', 'check', 'cantTell', 'note'] as const)
      expect(of(t, `findings/${outcome}`).figure?.lo).toBe(report.counts[outcome]);
    const drop = report.sections.find((s) => s.id === 'gas-drop')?.rows.find((r) => r.kind === 'answer');
    expect(of(t, 'gas/worst').figure).toEqual(drop?.kind === 'answer' ? drop.figure : undefined);
    // Every chapter a figure opens is there.
    const there = new Set([...report.sections.map((s) => `section:${s.id}`), 'findings', 'list', 'runs', 'things']);
    for (const f of t.figures) if (f.chapter !== null) expect(there, f.id).toContain(f.chapter);
    // Each is said somehow.
    for (const f of t.figures) expect(sayTally(f).figure, f.id).not.toBe('');
    // Runs of a service make up the whole of the new pipe.
    const each = t.figures.filter((f) => f.id.startsWith('metres/')).reduce((sum, f) => sum + (f.figure?.lo ?? 0), 0);
    expect(each).toBeCloseTo(of(t, 'metres').figure?.lo ?? 0, 1);
    expect(of(t, 'visible').figure?.lo).toBeLessThanOrEqual(of(t, 'metres').figure?.hi ?? 0);
  });

  test('before the work nothing is new, and only what can be asked of it is told', () => {
    const ids = tally(demoPlan('semi'), BEFORE).figures.map((f) => f.id.split('/')[0]);
    expect(new Set(ids)).toEqual(new Set(['gas', 'wait', 'findings']));
  });

  test('a leg in a void is not in sight, and a longer one in the open is', () => {
    const { plan, made } = copied('two-storey', (p, option) => {
      const fates = p.options[option]?.fates;
      for (const v of Object.values(p.voids)) if (fates) fates[v.id] = 'strip';
    });
    const bare = tally(plan, built(made));
    expect(of(bare, 'visible').say).toBe('no void or box is drawn');
    const drawn = tally(demoPlan('two-storey'), built('A'));
    expect(of(drawn, 'visible').figure?.hi).toBeLessThan((of(bare, 'visible').figure?.lo ?? 0) - 10);
    expect(of(drawn, 'holes/joists').figure).toMatchObject({ lo: 12, hi: 12 });
    expect(of(bare, 'holes/joists').figure).toMatchObject({ lo: 0, hi: 0 });
  });

  test('boxing counts what is new, the way it goes', () => {
    const { plan, made } = copied('flat', (p, option) => {
      const storey = Object.keys(p.storeys)[0] ?? '';
      const corner = (x: number, y: number) => ({ x, y });
      p.voids.box = {
        id: 'box',
        storey,
        name: '',
        kind: 'boxing',
        outline: [corner(0, 0), corner(300, 0), corner(300, 200), corner(0, 200)],
        holes: [],
        bottom: { from: 'floor', of: storey, mm: 0 },
        top: { from: 'floor', of: storey, mm: 2100 },
        joists: null,
        bearings: [],
        ventilated: null,
        mayBeCut: null,
        option,
        sureness: 'seen',
      };
    });
    expect(of(tally(plan, built(made)), 'boxing').figure).toMatchObject({ lo: 2.1, hi: 2.1 });
    expect(sayTally(of(tally(plan, built('A')), 'boxing')).figure).toBe('none drawn');
  });

  test('parts that lie over each other are counted once', () => {
    expect(coveredMm([])).toBe(0);
    expect(
      coveredMm([
        [100, 300],
        [0, 200],
        [150, 160],
        [400, 450],
      ]),
    ).toBe(350);
  });
});

describe('cases side by side', () => {
  const made = (figures: Partial<TallyFigure>[], when: Case['when'] = 'after'): Tally => ({
    case: { option: 'x', when },
    figures: figures.map((f) => ({
      id: 'f',
      group: 'Pipe',
      label: 'F',
      order: 0,
      figure: null,
      say: '',
      state: 'none',
      less: true,
      chapter: null,
      ids: [],
      ...f,
    })),
  });
  const standing = (...figures: (TallyFigure['figure'] | undefined)[]) =>
    tallyRows(figures.map((figure) => made(figure === undefined ? [] : [{ figure }])))[0]?.standing;
  const m = (lo: number, hi: number | null = lo) => between(lo, hi, 'm', 1);

  test('best is surely better than some, and no worse than any', () => {
    expect(standing(m(3), m(4), m(3))).toEqual(['best', null, 'best']);
    expect(standing(m(3), m(3.01))).toEqual(['level', 'level']);
    expect(standing(m(2, 5), m(4, 6))).toEqual(['close', 'close']);
    expect(standing(m(2, 3), m(4, 6), m(3.5, 4.5))).toEqual(['best', null, null]);
  });
  test('what nobody bounds or nobody knows is never the best, nor is anything beside it', () => {
    expect(standing(m(3, null), m(4))).toEqual(['close', 'close']);
    expect(standing(m(5, null), m(4))).toEqual([null, 'best']);
    expect(standing(null, m(4))).toEqual([null, null]);
    expect(standing(undefined, m(4), m(5))).toEqual([null, null, null]);
    expect(standing(m(4))).toEqual([null]);
  });
  test('before the work is no way of doing it', () => {
    const rows = tallyRows([made([{ figure: m(0) }], 'before'), made([{ figure: m(2) }]), made([{ figure: m(1) }])]);
    expect(rows[0]?.standing).toEqual([null, null, 'best']);
    const more = [made([{ figure: m(2), less: false }]), made([{ figure: m(1), less: false }])];
    expect(tallyRows(more)[0]?.standing).toEqual(['best', null]);
    const neither = [made([{ figure: m(2), less: null }]), made([{ figure: m(1), less: null }])];
    expect(tallyRows(neither)[0]?.standing).toEqual([null, null]);
  });
  test('what was told of the same things is not told again', () => {
    const ids = (of: Tally[]) => tallyRows(of).map((r) => r.id);
    const answers = (worst: string) =>
      made([
        { id: 'gas/boiler', group: 'Answers', order: 0, figure: m(1), ids: ['boiler'] },
        { id: 'gas/worst', group: 'Answers', order: 1, figure: m(worst === 'boiler' ? 1 : 2), ids: [worst] },
      ]);
    expect(ids([answers('boiler'), answers('boiler')])).toEqual(['gas/boiler']);
    expect(ids([answers('boiler'), answers('hob')])).toEqual(['gas/boiler', 'gas/worst']);
  });
  test('a lower bound of nothing is "can\'t tell"', () => {
    const [f] = made([{ figure: between(0, null, 'mbar', 2), state: 'cantTell', say: "can't tell: a size" }]).figures;
    expect(f && sayTally(f)).toEqual({ figure: "can't tell", under: 'a size' });
    const [g] = made([{ figure: exact(0, 'm', 1), say: 'none' }]).figures;
    expect(g && sayTally(g)).toEqual({ figure: 'none', under: '' });
  });
});

describe('what differs', () => {
  test('is nothing between an option and its copy, whatever the ids', () => {
    for (const name of demoNames) {
      const { plan, made } = copied(name);
      expect(differences(plan, built('A'), built(made)), name).toEqual([]);
      expect(differences(plan, built('A'), built('A')), name).toEqual([]);
    }
  });

  test('size, length and way of one run, told by its name and chosen in both cases', () => {
    const { plan, made } = copied('two-storey', (p, option) => {
      for (const leg of Object.values(p.legs)) {
        const run = p.runs[leg.run];
        if (leg.option === option && run?.service === 'gas') leg.tube = { kind: 'copper', size: '28x0.9' };
      }
    });
    const [d, ...others] = differences(plan, built('A'), built(made));
    expect(others).toEqual([]);
    expect(d).toMatchObject({ system: 'Gas', kind: 'changed', name: 'Gas to the new boiler', say: '28 instead of 22' });
    expect(plan.runs[d?.before[0] ?? '']?.option).toBe('A');
    expect(plan.runs[d?.after[0] ?? '']?.option).toBe(made);
  });

  test('a node moved: how much longer, or another way', () => {
    const { plan, made } = copied('flat', (p, option) => {
      const leg = Object.values(p.legs).find((l) => {
        const place = p.nodes[l.b]?.place;
        return l.option === option && p.runs[l.run]?.service === 'gas' && place?.on === 'storey';
      });
      const node = p.nodes[leg?.b ?? ''];
      if (node?.place.on !== 'storey') throw new Error('no free node of gas');
      node.place = { ...node.place, height: { ...node.place.height, mm: node.place.height.mm - 400 } };
    });
    const found = differences(plan, built('A'), built(made));
    expect(found.length).toBeGreaterThan(0);
    for (const d of found) expect(d).toMatchObject({ system: 'Gas', kind: 'changed' });
    expect(found[0]?.say).toMatch(/m (longer|shorter)|another (way|height)/);
  });

  test('before and after: the boiler moved, old pipe taken out, new pipe laid', () => {
    const found = differences(demoPlan('two-storey'), BEFORE, built('A'));
    const said = found.map((d) => `${d.kind}: ${d.name}: ${d.say}`);
    expect(said[0]).toMatch(/^moved: New boiler: 4\.8 m away, .*instead of Old boiler$/);
    expect(said).toContain('new: Gas to the new boiler: 5.5 m of 22');
    expect(said.some((s) => /^changed: Gas as it is: 6\.5 to 8\.5 m of 15 taken out$/.test(s))).toBe(true);
    // The same the other way round.
    const back = differences(demoPlan('two-storey'), built('A'), BEFORE);
    expect(back).toHaveLength(found.length);
    expect(back.filter((d) => d.kind === 'gone')).toHaveLength(found.filter((d) => d.kind === 'new').length);
  });

  test('a window widened is one change of one window', () => {
    const { plan, made } = copied('semi', (p, option) => {
      const old = Object.values(p.openings).find((o) => o.kind === 'window' && o.option === null);
      const to = p.options[option];
      if (!old || !to) throw new Error('no window');
      to.fates[old.id] = 'strip';
      p.openings.wide = { ...old, id: 'wide', widthMm: old.widthMm + 600, option };
    });
    const found = differences(plan, built('A'), built(made)).filter((d) => d.system === 'Building');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ kind: 'changed', after: ['wide'] });
    expect(found[0]?.say).toMatch(/^\d+ wide instead of \d+$/);
  });

  test('each is paired once, the best first', () => {
    const score = (f: string, t: string) =>
      f === 'a' && t === 'y' ? 2 : f === 'b' && t === 'y' ? 3 : f === 'a' ? 1 : -1;
    expect(matched(['a', 'b', 'c'], ['x', 'y', 'z'], score)).toEqual({
      pairs: [
        { from: 'b', to: 'y' },
        { from: 'a', to: 'x' },
      ],
      gone: ['c'],
      fresh: ['z'],
    });
  });
});
