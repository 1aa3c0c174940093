import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { assumptions } from '../../src/catalogue/assumptions.ts';
import { createEditor } from '../../src/editor/create-editor.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import type { Report } from '../../src/report/report.ts';
import { isCure } from '../../src/view/panels/ways/proven-ways.ts';
import { stepWays } from '../../src/view/panels/ways/step-ways.ts';
import { answer } from '../../src/worker/answer.ts';

const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
if (read.kind !== 'ok') throw new Error(read.sentence);
const { plan } = read;
const chosen: Case = { option: Object.keys(plan.options)[0] ?? null, when: 'after' };
function reportOn(of: Plan): Report {
  const said = answer({ n: 1, plan: of, chosen, revision: 0 });
  if (!said.ok) throw new Error(said.why);
  return said.report;
}
const before = reportOn(plan);
const clash = before.findings.find((f) => f.rule === 'clash/runs');
if (!clash) throw new Error('the flat has a clash');

describe('a clash passed with a step', () => {
  const ways = stepWays(plan, clash);

  test('is offered of new pipe only, and each steps one of the two', () => {
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) {
      expect(clash.legs).toContain(way.leg);
      expect(way.step).toMatchObject({ leg: way.leg, kind: 'passover' });
      expect(way.label).toMatch(/^Pass the .+ (over|under|beside) the /);
    }
    const legs = Object.fromEntries(Object.entries(plan.legs).map(([k, l]) => [k, { ...l, option: null }]));
    expect(stepWays({ ...plan, legs }, clash)).toEqual([]);
    const other = before.findings.find((f) => f.rule !== 'clash/runs');
    expect(other && stepWays(plan, other)).toEqual([]);
  });

  test('cures it as the engine sees it, one way at least, in one step that is undone', () => {
    const cures = ways.filter((way) => {
      const editor = createEditor({ plan, ids: countingIds(), assumptions: assumptions() });
      const next = editor.preview('leg.step', way.step);
      return next !== null && isCure(before.findings, reportOn(next).findings, clash.key);
    });
    expect(cures.length).toBeGreaterThan(0);
    const editor = createEditor({ plan, ids: countingIds(), assumptions: assumptions() });
    expect(editor.run('leg.step', cures[0]?.step).ok).toBe(true);
    expect(editor.store.getState().history.undo).toEqual(['passover']);
    editor.undo();
    expect(editor.store.getState().plan).toEqual(plan);
  });
});
