import { expect, test } from 'vitest';
import { evaluate, rules } from '../../src/engine/evaluate.ts';

// The joint of two services was reported once from each of the two, and counted as two places.
test('one joint of two services is one place', () => {
  const plan = rules
    .get('network/two-services')
    ?.examples.find((e) => e.expect === 'stop')
    ?.given();
  if (!plan) throw new Error('no example');
  const found = evaluate(plan, { option: 'A', when: 'after' }).findings.filter(
    (f) => f.rule === 'network/two-services',
  );
  expect(found.map((f) => [f.ids, f.more])).toEqual([[['c', 'g'], 0]]);
});
