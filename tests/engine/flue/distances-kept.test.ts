import { expect, test } from 'vitest';
import { give } from '../../../src/engine/evaluate.ts';
import { terminalDistances } from '../../../src/engine/flue/terminal-distances.ts';
import { demoPlan } from '../demo-file.ts';

const house = demoPlan('semi');
const option = Object.keys(house.options)[0] ?? null;
const ask = (plan: typeof house) => terminalDistances(give(plan, { option, when: 'after' }));

test('routing a pipe leaves every distance of a flue; an opening or a terminal moved asks anew', () => {
  const first = ask(house);
  expect(first.some((d) => d.distances.length > 3)).toBe(true);
  expect(ask({ ...house, legs: {}, nodes: {}, runs: {}, items: {} })).toBe(first);
  const [opening] = Object.values(house.openings);
  if (!opening) throw new Error('no opening');
  const openings = { ...house.openings, [opening.id]: { ...opening } };
  expect(ask({ ...house, openings })).not.toBe(first);
  const told = (of: typeof first) => of.map((d) => d.distances);
  expect(told(ask({ ...house, openings }))).toEqual(told(first));
  expect(told(ask(structuredClone(house)))).toEqual(told(first));
});
