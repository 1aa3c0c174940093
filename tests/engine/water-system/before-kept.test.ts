import { expect, test } from 'vitest';
import { give } from '../../../src/engine/evaluate.ts';
import { hotBefore } from '../../../src/engine/water-system/before.ts';
import { demoPlan } from '../demo-file.ts';

const house = demoPlan('extension');
const option = Object.keys(house.options)[0] ?? null;
const ask = (plan: typeof house) => hotBefore(give(plan, { option, when: 'after' }));
const without = <T extends { readonly option: string | null }>(of: Readonly<Record<string, T>>, sort: boolean) =>
  Object.fromEntries(Object.entries(of).filter(([, r]) => (r.option === null) !== sort));

test('drawing in an option leaves the ways of the house as it stands; a surveyed pipe changed asks anew', () => {
  const first = ask(house);
  expect(first.size).toBeGreaterThan(0);
  expect(ask({ ...house, legs: without(house.legs, false), name: 'other' })).toBe(first);
  const old = Object.values(house.stretches).find((s) => house.runs[s.run]?.service === 'hot' && s.option === null);
  if (!old) throw new Error('no old hot pipe');
  const moved = { ...house, stretches: { ...house.stretches, [old.id]: { ...old } } };
  expect(ask(moved)).not.toBe(first);
  expect(ask(moved)).toEqual(first);
  const { [old.id]: _, ...rest } = house.stretches;
  expect(ask({ ...house, stretches: rest })).not.toEqual(first);
});
