import { expect, test } from 'vitest';
import { reachOf } from '../../../src/engine/drainage/reach.ts';
import { give } from '../../../src/engine/evaluate.ts';
import { demoPlan } from '../demo-file.ts';
import { AFTER, hang } from './reach-house.ts';

const house = demoPlan('extension');
const [option] = Object.keys(house.options);
const ask = (plan: typeof house) => reachOf(give(plan, { ...AFTER, option: option ?? null }));

test('routing a pipe leaves every answer as it is; a boiler hung elsewhere, a wall moved or another edition asks anew', () => {
  const first = ask(house);
  expect(first.length).toBeGreaterThan(0);
  expect(ask({ ...house, legs: {}, nodes: { ...house.nodes }, runs: {}, items: {} })).toBe(first);
  expect(ask({ ...house, walls: { ...house.walls } })).not.toBe(first);
  expect(ask({ ...house, basis: { ...house.basis } })).not.toBe(first);
  const raised = { ...house };
  const boiler = Object.values(house.points).find((p) => p.kind === 'boiler' && p.option === option);
  hang(raised, boiler?.id ?? '', 9000);
  expect(ask(raised)).not.toEqual(first);
});

test('what is kept is what would be worked out', () => {
  const first = ask(house);
  expect(ask(structuredClone(house))).toEqual(first);
  expect(ask({ ...structuredClone(house), legs: {}, stretches: {}, items: {}, runs: {}, nodes: {} })).toEqual(first);
});
