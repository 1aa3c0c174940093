import { expect, test } from 'vitest';
import { example } from '../../src/engine/example.ts';
import { sayPoint, sayRun } from '../../src/network/displace/say.ts';

// A refusal named an unnamed run by the id of its service: "The heatingFlow run".
test('a refusal names a run and a point in words', () => {
  const { plan } = example()
    .point('gas-meter', 'm', [0, 0, 500])
    .run('f', 'heatingFlow', [
      [0, 0, 300],
      [1000, 0, 300],
    ]);
  if (plan.points.m) plan.points.m.name = '';
  expect(sayRun(plan, 'f')).toBe('The heating flow run');
  expect(sayPoint(plan, 'm')).toBe('the gas meter');
});
