import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

// With a pinned edition that is not here the clearance of gas is unknown: nothing was said, and a clash threw.
test('gas beside cold is not passed in silence where the pinned edition is lost', () => {
  const { plan } = example()
    .run('g', 'gas', [
      [0, 0, 300],
      [2000, 0, 300],
    ])
    .run('c', 'cold', [
      [1000, -500, 310],
      [1000, 500, 310],
    ]);
  plan.basis.editions = { 'gas-clearance': 'lost' };
  const found = evaluate(plan, { option: 'A', when: 'after' }).findings.filter((f) => f.rule === 'clash/runs');
  expect(found.map((f) => [f.outcome, f.ids])).toEqual([
    ['stop', ['c', 'g']],
    ['cantTell', ['g']],
  ]);
  for (const { cites } of found) expect(cites.every((c) => c.source !== '' && c.clause !== '')).toBe(true);
});
