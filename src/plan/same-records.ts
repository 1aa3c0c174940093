import { type Plan, RECORD_MAPS } from './plan.ts';

function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  return (
    keys.length === others.length &&
    keys.every((key) => Object.hasOwn(b, key) && isSame(Reflect.get(a, key), Reflect.get(b, key)))
  );
}

/** What is one record by itself. */
const WHOLE = ['basis', 'job'] as const satisfies readonly (keyof Plan)[];

/**
 * A plan that comes from another thread is a copy in every part, so nothing that is remembered by a record would be found
 * again. Records that say the same as before are taken from before; the plan itself says the same either way.
 */
export function sameRecords(before: Plan | null, plan: Plan): Plan {
  if (before === null || before.id !== plan.id) return plan;
  const kept = { ...plan };
  for (const name of WHOLE) if (isSame(before[name], plan[name])) Reflect.set(kept, name, before[name]);
  for (const name of RECORD_MAPS) {
    const was = before[name] as Readonly<Record<string, unknown>>;
    const now = plan[name] as Readonly<Record<string, unknown>>;
    const next = Object.entries(now).map(([id, record]) => [id, isSame(was[id], record) ? was[id] : record] as const);
    const whole = next.length === Object.keys(was).length && next.every(([id, record]) => was[id] === record);
    Reflect.set(kept, name, whole ? was : Object.fromEntries(next));
  }
  return kept;
}
