import { evaluate } from '../engine/evaluate.ts';
import type { Plan } from '../plan/plan.ts';
import { sameRecords } from '../plan/same-records.ts';
import type { Answer, Ask } from './messages.ts';

let last: Plan | null = null;

/** What stands behind the worker's message, so that it can be tested where there is no worker. */
export function answer(ask: Ask): Answer {
  try {
    last = sameRecords(last, ask.plan);
    return { n: ask.n, ok: true, report: evaluate(last, ask.chosen, ask.revision) };
  } catch (error) {
    return { n: ask.n, ok: false, why: error instanceof Error ? error.message : String(error) };
  }
}
