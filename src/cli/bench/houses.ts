import { readFileSync } from 'node:fs';
import { readPlan } from '../../files/format/read-plan.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import { copiesFor, copiesOf } from './copies.ts';

export const AFTER: Case = { option: 'A', when: 'after' };

/** Text of a demo plan. The bench is run from the top folder, as npm does. */
export function demoText(name: string): string {
  return readFileSync(`demo-plans/${name}.plan.json`, 'utf8');
}

export function demoPlan(name: string): Plan {
  const read = readPlan(demoText(name));
  if (read.kind !== 'ok') throw new Error(`the demo plan ${name} does not open`);
  return read.plan;
}

/** The flat over and over, with about this many legs. */
export function manyLegs(legs: number): Plan {
  const flat = demoPlan('flat');
  return copiesOf(flat, copiesFor(flat, legs));
}
