import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { assumptions } from '../../src/catalogue/assumptions.ts';
import { createEditor } from '../../src/editor/create-editor.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import type { Finding } from '../../src/report/finding.ts';
import type { Evaluator, Report } from '../../src/report/report.ts';
import { isCure, provenWays } from '../../src/view/panels/ways/proven-ways.ts';
import { hasRoom } from '../../src/view/panels/ways/room-about.ts';
import { waysOut } from '../../src/view/panels/ways/ways-out.ts';
import { answer } from '../../src/worker/answer.ts';

function flat(): Plan {
  const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
  if (read.kind !== 'ok') throw new Error(read.sentence);
  return read.plan;
}
const plan = flat();
const chosen: Case = { option: Object.keys(plan.options)[0] ?? null, when: 'after' };

function reportOn(of: Plan, at: Case = chosen): Report {
  const said = answer({ n: 1, plan: of, chosen: at, revision: 0 });
  if (!said.ok) throw new Error(said.why);
  return said.report;
}
const evaluate: Evaluator = async (of, at) => reportOn(of, at);
const before = reportOn(plan);
const clash = before.findings.find((f) => f.rule === 'clash/runs');
if (!clash) throw new Error('the flat has a clash');

describe('ways out of a clash', () => {
  const ways = waysOut(plan, clash);

  test('each moves one new leg across itself, no further than is wanted', () => {
    expect(ways.length).toBeGreaterThan(2);
    for (const way of ways) {
      expect(clash.legs).toContain(way.leg);
      expect(Math.hypot(way.by.x, way.by.y, way.by.z)).toBeCloseTo(way.mm, 6);
      expect(Number(/, (\d+) clear$/.exec(way.under)?.[1])).toBeGreaterThanOrEqual(clash.wanted?.lo ?? 0);
    }
    expect(ways.map((w) => w.label)).toContain('Bring the cold along behind');
  });

  test('only those the engine finds nothing against are offered, and taking one is one step', async () => {
    const editor = createEditor({ plan, ids: countingIds(), assumptions: assumptions() });
    const preview = (way: (typeof ways)[number]) => editor.preview('leg.move', { leg: way.leg, by: way.by });
    const proving = { plan, chosen, before: before.findings, key: clash.key, preview, evaluate, given: () => false };
    const proven = await provenWays(ways, proving);
    expect(proven.length).toBeGreaterThan(0);
    expect(proven.length).toBeLessThanOrEqual(3);
    for (const way of proven) {
      const after = reportOn(way.plan);
      expect(after.findings.map((f) => f.key)).not.toContain(clash.key);
      expect(after.counts.stop).toBe(0);
    }
    const [first] = proven;
    expect(editor.run('leg.move', { leg: first?.leg, by: first?.by }).ok).toBe(true);
    expect(editor.store.getState().history.undo).toHaveLength(1);
    expect(reportOn(editor.store.getState().plan).counts.stop).toBe(0);
  });

  test('nothing more is worked out once nobody waits', async () => {
    let asked = 0;
    const counting: Evaluator = (...ask) => {
      asked++;
      return evaluate(...ask);
    };
    const proving = { plan, chosen, before: before.findings, key: clash.key, evaluate: counting, given: () => true };
    expect(await provenWays(ways, { ...proving, preview: () => plan })).toEqual([]);
    expect(asked).toBe(0);
  });

  test('old pipe is not moved, and other findings have none', () => {
    const old = {
      ...plan,
      legs: Object.fromEntries(Object.entries(plan.legs).map(([k, l]) => [k, { ...l, option: null }])),
    };
    expect(waysOut(old, clash)).toEqual([]);
    const other = before.findings.find((f) => f.rule !== 'clash/runs');
    expect(other && waysOut(plan, other)).toEqual([]);
  });
});

describe('room for a pipe', () => {
  const at = { x: 1500, y: 6250, z: 400 };
  test('a wall, the floor and the ceiling stop it', () => {
    expect(hasRoom(plan, 'B', at, { x: 0, y: 40, z: 0 }, 11)).toBe(true);
    expect(hasRoom(plan, 'B', at, { x: 0, y: 80, z: 0 }, 11)).toBe(false);
    expect(hasRoom(plan, 'B', at, { x: 0, y: 0, z: -395 }, 11)).toBe(false);
    expect(hasRoom(plan, 'B', at, { x: 0, y: 0, z: -450 }, 11)).toBe(false);
    expect(hasRoom(plan, 'gone', at, { x: 0, y: 0, z: 0 }, 11)).toBe(false);
  });
});

describe('a cure', () => {
  const finding = (key: string, outcome: Finding['outcome']) => ({ ...clash, key, outcome });
  const was = [finding('a', 'stop'), finding('b', 'check')];
  test('takes the finding away and brings nothing worse', () => {
    expect(isCure(was, [finding('b', 'check')], 'a')).toBe(true);
    expect(isCure(was, [finding('b', 'check'), finding('n', 'note')], 'a')).toBe(true);
    expect(isCure(was, was, 'a')).toBe(false);
    expect(isCure(was, [finding('b', 'stop')], 'a')).toBe(false);
    expect(isCure(was, [finding('c', 'check')], 'a')).toBe(false);
  });
});
