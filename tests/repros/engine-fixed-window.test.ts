import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';
import type { Opening } from '../../src/plan/records/building.ts';

const across = (change: Partial<Opening>) => {
  const { plan } = example()
    .wall('w', [0, 0], [4000, 0])
    .opening('o', 'w', 1000, 1200, { kind: 'window', sillMm: 900, headMm: 2100, ...change })
    .run('c', 'cold', [
      [0, -70, 1200],
      [4000, -70, 1200],
    ]);
  const { findings } = evaluate(plan, { option: 'A', when: 'after' });
  return findings.filter((f) => f.rule === 'building/across-opening').map((f) => [f.outcome, f.why]);
};

// A pipe across a window that does not open was said to stand in the way of what opens.
test('across a window that does not open is a check, in other words', () => {
  const [[outcome, why] = []] = across({ opens: false });
  expect(outcome).toBe('check');
  expect(why).not.toContain('what opens');
});

test('across one that opens, or may, stops', () => {
  expect(across({ opens: true })[0]?.[0]).toBe('stop');
  expect(across({ opens: null })[0]?.[0]).toBe('stop');
});

test('across a way through stops, though nothing opens there', () => {
  const [[outcome, why] = []] = across({ kind: 'archway', opens: false, sillMm: 0 });
  expect(outcome).toBe('stop');
  expect(why).toContain('people');
});
