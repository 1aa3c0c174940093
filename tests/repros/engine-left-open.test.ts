import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

// The old boiler was stripped and the pipe to it kept: its open end was nobody's finding.
const left = (service: 'gas' | 'cold', fate: 'keep' | 'cap') => {
  const { plan } = example()
    .point('boiler', 'old', [3000, 0, 1300], {}, null)
    .run('r', service, [[0, -81, 900], [3000, -81, 900], { point: 'old', connection: service }], { option: null });
  plan.options.A = { id: 'A', name: 'A', note: '', fates: { old: 'strip', 'r.2': fate } };
  return evaluate(plan, { option: 'A', when: 'after' }).findings.filter((f) => f.rule.endsWith('left-open'));
};

test('gas pipe left open where the old boiler was is a stop of life safety', () => {
  expect(left('gas', 'keep').map((f) => [f.rule, f.outcome, f.lifeSafety])).toEqual([['gas/left-open', 'stop', true]]);
});

test('water pipe left open is a check', () => {
  expect(left('cold', 'keep').map((f) => [f.rule, f.outcome, f.lifeSafety])).toEqual([
    ['network/left-open', 'check', false],
  ]);
});

test('a pipe cut back and capped is neither', () => {
  expect(left('gas', 'cap')).toEqual([]);
  expect(left('cold', 'cap')).toEqual([]);
});
