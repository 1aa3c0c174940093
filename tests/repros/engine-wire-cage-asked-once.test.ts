import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { demoPlan } from '../engine/demo-file.ts';

// Two discharge pipes of one house, both low outside, and nobody told of a cage: it was asked twice in the same words.
test('what has to be looked at on two ends is asked once', () => {
  const plan = structuredClone(demoPlan('semi'));
  for (const p of Object.values(plan.points)) if (p.kind === 'outside-end') p.fields.caged = null;
  const said = evaluate(plan, { option: 'A', when: 'after' }).findings.filter((f) => f.rule === 'discharge/end');
  expect(said.map((f) => [f.outcome, f.more])).toEqual([['cantTell', 1]]);
  expect(new Set(said[0]?.legs).size).toBeGreaterThan(1);
});
