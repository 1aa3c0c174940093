import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import type { Finding } from '../../src/report/finding.ts';
import { demoPlan } from './demo-file.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const keys = (plan: Plan, chosen: Case = AFTER): string[] => evaluate(plan, chosen).findings.map((f) => f.key);
const clash = (plan: Plan): Finding | undefined => evaluate(plan, AFTER).findings.find((f) => f.rule === 'clash/runs');

/** The leg in two, as an editor does it: the first part keeps its id. */
function split(plan: Plan, id: string, x: number, y: number, mm: number): void {
  const leg = plan.legs[id];
  if (!leg) throw new Error(`no leg ${id}`);
  const node = `${id}-split`;
  const height = { from: 'floor' as const, of: 'B', mm };
  plan.nodes[node] = { id: node, place: { on: 'storey', storey: 'B', x, y, height }, turn: null, option: leg.option };
  plan.legs[`${id}-rest`] = { ...leg, id: `${id}-rest`, a: node };
  plan.legs[id] = { ...leg, b: node };
}

// What somebody wrote beside a finding hangs on its key, so a key may not change while the fault is the same.
describe('the key of a finding', () => {
  test('stays when a leg of it is split, and so do all the others', () => {
    const plan = demoPlan('flat');
    const before = keys(plan);
    split(plan, 'B-c1-1', 1500, 6250, 400);
    expect(keys(plan)).toEqual(before);
    expect(clash(plan)?.legs).toContain('B-c1-1-rest');
  });

  test('stays when its run is drawn anew through other nodes', () => {
    const plan = demoPlan('flat');
    const before = clash(plan)?.key;
    for (const [id, leg] of Object.entries(plan.legs)) {
      if (leg.run !== 'B-c1') continue;
      delete plan.legs[id];
      plan.legs[`new-${id}`] = { ...leg, id: `new-${id}` };
    }
    expect(clash(plan)?.key).toBe(before);
  });

  test('stays when the fault gets worse, with the new figure in it', () => {
    const plan = demoPlan('flat');
    const first = clash(plan);
    for (const leg of Object.values(plan.legs)) {
      if (leg.run === 'B-r1') leg.tube = { ...leg.tube, size: '28x0.9' };
    }
    const worse = clash(plan);
    expect(worse?.key).toBe(first?.key);
    expect(worse?.found?.lo).toBeLessThan(first?.found?.lo ?? Number.NEGATIVE_INFINITY);
  });

  test('is another in another option, and before the work', () => {
    const plan = demoPlan('flat');
    const a = keys(plan);
    const b = JSON.parse(JSON.stringify(plan).replaceAll('"option":"A"', '"option":"B"')) as Plan;
    b.options = { B: { id: 'B', name: 'B', note: '', fates: {} } };
    const ofB = keys(b, { option: 'B', when: 'after' });
    expect(ofB.length).toBeGreaterThanOrEqual(a.length);
    expect(ofB.filter((key) => a.includes(key))).toEqual([]);
    const house = demoPlan('two-storey');
    const before = keys(house, { option: 'A', when: 'before' });
    expect(before.length).toBeGreaterThan(0);
    expect(before.filter((key) => keys(house).includes(key))).toEqual([]);
  });

  test('an acknowledgement changes nothing of what the engine says', () => {
    const plan = demoPlan('flat');
    const before = JSON.stringify(evaluate(plan, AFTER));
    const found = clash(plan);
    const seen = { key: found?.key ?? '', note: 'seen', by: 'nobody', on: null, found: null, wanted: null };
    plan.acknowledgements.a = { id: 'a', ...seen };
    expect(JSON.stringify(evaluate(plan, AFTER))).toBe(before);
  });
});

describe('an option', () => {
  test('of which nothing is told finds what is there and nothing new', () => {
    const plan = demoPlan('flat');
    plan.options.C = { id: 'C', name: 'Nothing', note: '', fates: {} };
    const report = evaluate(plan, { option: 'C', when: 'after' });
    const told = (of: readonly Finding[]) => of.map((f) => [f.rule, f.outcome, f.ids]);
    expect(told(report.findings)).toEqual(told(evaluate(plan, { option: 'C', when: 'before' }).findings));
    expect(report.pieces).toEqual([]);
  });

  test('before the work there is nothing to buy', () => {
    for (const name of ['flat', 'two-storey']) {
      const report = evaluate(demoPlan(name), { option: 'A', when: 'before' });
      expect(report.lines).toEqual([]);
    }
  });
});
