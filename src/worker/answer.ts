import { evaluate } from '../engine/evaluate.ts';
import type { Answer, Ask } from './messages.ts';

/** What stands behind the worker's message, so that it can be tested where there is no worker. */
export function answer(ask: Ask): Answer {
  try {
    return { n: ask.n, ok: true, report: evaluate(ask.plan, ask.chosen, ask.revision) };
  } catch (error) {
    return { n: ask.n, ok: false, why: error instanceof Error ? error.message : String(error) };
  }
}
