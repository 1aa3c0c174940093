import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

// With two meters, each on pipes of its own, neither was held against its plate and nothing was said.
test('two meters that feed apart are not passed in silence', () => {
  const e = example();
  for (const [k, x] of [
    ['1', 0],
    ['2', 9000],
  ] as const) {
    e.point('gas-meter', `m${k}`, [x, 0, 500], { meter: 'G4' });
    e.point('boiler', `b${k}`, [x + 3000, 0, 1300], { inputKwHotWater: 70, inputBasis: 'gross' });
    const way = [{ point: `m${k}`, connection: 'outlet' }, [x + 75, -115, 2300], { point: `b${k}`, connection: 'gas' }];
    e.run(`g${k}`, 'gas', way as Parameters<typeof e.run>[2], { size: '35x1.2' });
  }
  const { findings } = evaluate(e.plan, { option: 'A', when: 'after' });
  const found = findings.filter((f) => f.rule === 'gas/meter-capacity');
  expect(found.map((f) => [f.outcome, f.ids])).toEqual([['cantTell', ['m1', 'm2']]]);
});
