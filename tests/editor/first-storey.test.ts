import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { firstStorey } from '../../src/editor/first-storey.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';

function demo(name: string): Plan {
  const read = readPlan(readFileSync(new URL(`../../demo-plans/${name}.plan.json`, import.meta.url), 'utf8'));
  if (read.kind !== 'ok') throw new Error(read.sentence);
  return read.plan;
}

const nameOf = (plan: Plan, storey: string) => plan.storeys[storey]?.name;

test.each([
  ['semi', 'First floor'],
  ['extension', 'Ground floor'],
  ['flat', 'First floor'],
])('%s opens on the floor that holds most of the new pipe: %s', (name, floor) => {
  const plan = demo(name);
  const option = Object.keys(plan.options)[0] ?? null;
  expect(nameOf(plan, firstStorey(plan, { option, when: 'after' }))).toBe(floor);
});

test('before the work nothing is new: the first floor that was told', () => {
  const plan = demo('semi');
  const option = Object.keys(plan.options)[0] ?? null;
  expect(firstStorey(plan, { option, when: 'before' })).toBe(Object.keys(plan.storeys)[0]);
});
