import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

const AFTER = { option: 'A', when: 'after' } as const;

// Findings named services and kinds of point by the ids that files use: "heatingFlow", "gas-meter".
test('services that meet are called what they are called on screen', () => {
  const e = example().run('f', 'heatingFlow', [
    [0, 0, 2300],
    [1000, 0, 2300],
    [2000, 0, 2300],
  ]);
  e.run('r', 'boilerRelief', [e.nodesOf('f')[1] ?? '', [1000, 1000, 2300]]);
  const found = evaluate(e.plan, AFTER).findings.filter((f) => f.rule === 'network/two-services');
  expect(found.map((f) => f.why)).toEqual([
    'Pipes of different services meet here: boiler relief and heating flow. They cannot share a joint.',
  ]);
});

test('a point without a name is called by its kind in words', () => {
  const { plan } = example()
    .point('gas-meter', 'm', [0, 0, 500])
    .run('c', 'cold', [{ point: 'm', connection: 'outlet' }, [75, -115, 2300]]);
  if (plan.points.m) plan.points.m.name = '';
  const found = evaluate(plan, AFTER).findings.filter((f) => f.rule === 'network/wrong-connection');
  expect(found.map((f) => f.why)).toEqual(['The pipe is on the wrong connection of the gas meter: Outlet.']);
});
