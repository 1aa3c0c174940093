import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { lengthBetween } from '../../src/geometry/places.ts';
import { type Plan, RECORD_MAPS } from '../../src/plan/plan.ts';
import { extensionPlan } from './extension-plan.ts';
import { flatPlan } from './flat-plan.ts';
import { semiPlan } from './semi-plan.ts';
import { twoStoreyPlan } from './two-storey-plan.ts';

/** What a demo plan is expected to give: words, outcome, figure with its tolerance, and where the figure comes from. */
interface Expected {
  readonly finding: string;
  readonly outcome: string;
  readonly value: number | null;
  readonly unit: string;
  readonly tolerance: number;
  readonly from: string;
  readonly ids?: readonly string[];
  readonly section?: string;
}

const read = (name: string): Expected[] =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../../demo-plans/${name}.expected.json`, import.meta.url)), 'utf8'));

function metresOf(plan: Plan, run: string): number {
  const legs = Object.values(plan.legs).filter((leg) => leg.run === run);
  const mm = legs.map((leg) => {
    const [a, b] = [plan.nodes[leg.a], plan.nodes[leg.b]];
    return (a && b && lengthBetween(plan, a, b)?.mm) ?? Number.NaN;
  });
  return mm.reduce((sum, one) => sum + one, 0) / 1000;
}

describe.each([
  ['extension', extensionPlan],
  ['flat', flatPlan],
  ['semi', semiPlan],
  ['two-storey', twoStoreyPlan],
])('figures expected of %s', (name, make) => {
  const plan = make();
  const expected = read(name);

  test.each(expected.map((e) => [e.finding, e] as const))('%s: told in full', (_finding, e) => {
    expect(['stop', 'check', 'note', 'cantTell', 'pass', 'none']).toContain(e.outcome);
    expect(e.from.length).toBeGreaterThan(0);
    expect(e.tolerance).toBeGreaterThanOrEqual(0);
    expect(e.value === null || Number.isFinite(e.value)).toBe(true);
    const known = new Set(RECORD_MAPS.flatMap((map) => Object.keys(plan[map])));
    for (const id of e.ids ?? []) expect(known.has(id), id).toBe(true);
    expect([...(e.ids ?? [])].sort()).toEqual(e.ids ?? []);
  });

  test('lengths are those of the drawing', () => {
    const lengths = expected.filter((e) => e.section === 'runs');
    expect(lengths.length).toBeGreaterThan(2);
    for (const e of lengths) {
      expect(Math.abs(metresOf(plan, e.ids?.[0] ?? '') - (e.value ?? 0)), e.finding).toBeLessThanOrEqual(e.tolerance);
    }
  });
});
