import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { demoPlan } from '../engine/demo-file.ts';

// Pipe and fittings that were there already stood in the list of what to buy.
test('nothing that was there already is in the list', () => {
  const plan = demoPlan('two-storey');
  const report = evaluate(plan, { option: 'A', when: 'after' });
  const legs = report.pieces.flatMap((p) => p.at.leg ?? []);
  expect(legs.length).toBeGreaterThan(0);
  expect(legs.filter((id) => plan.legs[id]?.option === null)).toEqual([]);
  const reducers = report.pieces.filter((p) => p.kind === 'reducer' && p.note.includes('Bath taps'));
  expect(reducers).toEqual([]);
  expect(report.pieces.filter((p) => 'state' in p)).toEqual([]);
});

test('the tee cut into old pipe and the stop end on what is cut off are', () => {
  const report = evaluate(demoPlan('two-storey'), { option: 'A', when: 'after' });
  const kinds = report.pieces.filter((p) => p.at.node?.endsWith('-tee')).map((p) => p.kind);
  expect(kinds).toContain('tee');
  expect(report.pieces.some((p) => p.kind === 'stop-end')).toBe(true);
});
