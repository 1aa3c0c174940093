import { differences, tally } from '../engine/evaluate.ts';
import type { Plan } from '../plan/plan.ts';
import { sameRecords } from '../plan/same-records.ts';
import type { CompareAnswer, CompareAsk } from './messages.ts';

let last: Plan | null = null;

/** What stands behind a question for a comparison. Never throws: a slip becomes one sentence. */
export function answerCompare(ask: CompareAsk): CompareAnswer {
  const { n } = ask;
  try {
    last = sameRecords(last, ask.plan);
    return ask.compare === 'tally'
      ? { n, tally: tally(last, ask.chosen) }
      : { n, differences: differences(last, ask.from, ask.to) };
  } catch (error) {
    return { n, why: error instanceof Error ? error.message : String(error) };
  }
}
