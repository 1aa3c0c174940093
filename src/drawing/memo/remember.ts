import type { Plan } from '../../plan/plan.ts';
import { stillReads, type Traced, traceReads } from './trace-reads.ts';

interface Kept {
  readonly reads: Traced['reads'];
  readonly leansOn: readonly unknown[];
  readonly value: unknown;
}

const kept = new WeakMap<object, Map<string, Kept>>();
let made = 0;

/** How many things were made anew since the start: for tests that count. */
export const madeSoFar = (): number => made;

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((x, i) => Object.is(x, b[i]));

/**
 * What was made of a record, again, as long as the record, every record that was read while making it, and everything
 * in `leansOn` are the same; else made anew. `make` must read the plan through its argument only.
 */
export function remember<T>(
  record: object,
  key: string,
  plan: Plan,
  leansOn: readonly unknown[],
  make: (plan: Plan) => T,
): T {
  let of = kept.get(record);
  const was = of?.get(key);
  if (was && same(was.leansOn, leansOn) && stillReads(plan, was.reads)) return was.value as T;
  const traced = traceReads(plan);
  const value = make(traced.plan);
  made++;
  if (!of) {
    of = new Map();
    kept.set(record, of);
  }
  of.set(key, { reads: traced.reads, leansOn, value });
  return value;
}

/** As `remember`, and remembers nothing: for what is in the middle of a gesture. */
export const makeAnew: typeof remember = (_record, _key, plan, _leansOn, make) => make(plan);
