import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

// A boiler whose gas pipe no meter feeds had no figure and no finding: a silent pass.
test('gas drop of an appliance no meter reaches cannot be told, and it is said', () => {
  const plan = example()
    .point('boiler', 'b', [3000, 0, 1300], { inputKwHotWater: 30, inputBasis: 'gross' })
    .run('g', 'gas', [[0, -81, 900], [3000, -81, 900], { point: 'b', connection: 'gas' }]).plan;
  const report = evaluate(plan, { option: 'A', when: 'after' });
  const found = report.findings.filter((f) => f.rule === 'gas/drop');
  expect(found.map((f) => [f.outcome, f.ids, f.missing])).toEqual([['cantTell', ['b'], ['a meter that feeds it']]]);
});
