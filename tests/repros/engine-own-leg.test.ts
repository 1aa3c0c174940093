import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';
import type { Plan } from '../../src/plan/plan.ts';

const clashes = (plan: Plan) =>
  evaluate(plan, { option: 'A', when: 'after' }).findings.filter((f) => f.rule === 'clash/runs');

// Pairs of legs of one run were never looked at, so a run drawn across itself passed.
test('a run that crosses itself is a clash of one run', () => {
  const { plan } = example().run('c', 'cold', [
    [0, 0, 300],
    [2000, 0, 300],
    [2000, 500, 300],
    [1000, 500, 300],
    [1000, -500, 300],
  ]);
  const [found, ...more] = clashes(plan);
  expect(more).toEqual([]);
  expect([found?.outcome, found?.ids, found?.found?.lo]).toEqual(['stop', ['c'], -22]);
  expect(found?.title).toBe('Cold 22 meets itself');
  expect(found?.at).toMatchObject({ x: 1000, y: 0, z: 300 });
});

test('a run that jogs, doubles back clear of itself or has short legs does not meet itself', () => {
  const jog = example().run('c', 'cold', [
    [0, 0, 300],
    [1000, 0, 300],
    [1000, 40, 300],
    [2000, 40, 300],
    [2000, 90, 300],
    [0, 90, 300],
  ]);
  expect(clashes(jog.plan)).toEqual([]);
});
