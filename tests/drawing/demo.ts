import { readFileSync } from 'node:fs';
import type { Plan } from '../../src/plan/plan.ts';

/** A demo plan as it is shipped. Frozen all through, as the editor keeps it. */
export function demo(name: string): Plan {
  const text = readFileSync(new URL(`../../demo-plans/${name}.plan.json`, import.meta.url), 'utf8');
  return frozen((JSON.parse(text) as { plan: Plan }).plan);
}

export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
}
