import { readdirSync, readFileSync } from 'node:fs';
import { readPlan } from '../../src/files/format/read-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';

const folder = new URL('../../demo-plans/', import.meta.url);

/** Names of the demo plans: every `name.plan.json`. */
export const demoNames: readonly string[] = readdirSync(folder)
  .filter((file) => file.endsWith('.plan.json'))
  .map((file) => file.replace('.plan.json', ''))
  .sort();

/** A demo plan as the program opens it; a copy of its own, to be changed freely. */
export function demoPlan(name: string): Plan {
  const read = readPlan(readFileSync(new URL(`${name}.plan.json`, folder), 'utf8'));
  if (read.kind !== 'ok') throw new Error(`${name} does not open`);
  return read.plan;
}
