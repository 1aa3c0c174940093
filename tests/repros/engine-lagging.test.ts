import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

const AFTER = { option: 'A', when: 'after' } as const;

function pair(apart: number, insulationMm: number) {
  const { plan } = example()
    .run(
      'c',
      'cold',
      [
        [0, 0, 300],
        [2000, 0, 300],
      ],
      { insulationMm },
    )
    .run(
      'h',
      'hot',
      [
        [0, 0, 300 + apart],
        [2000, 0, 300 + apart],
      ],
      { insulationMm },
    );
  return evaluate(plan, AFTER).findings.filter((f) => f.rule === 'clash/runs');
}

// Two lagged pipes 18 apart were said to run into each other: it is the lagging that does.
test('lagging that meets lagging is told as that, and is a check', () => {
  const [found] = pair(40, 13);
  expect([found?.outcome, found?.title]).toEqual(['check', 'Cold 22 and hot 22: no room for the lagging']);
  expect(found?.why).toContain('18 apart');
  expect(found?.found?.lo).toBe(-8);
});

test('pipes that meet below their lagging still stop', () => {
  expect(pair(20, 13).map((f) => f.outcome)).toEqual(['stop']);
});

test('pipes with room for their lagging pass', () => {
  expect(pair(60, 13)).toEqual([]);
});
