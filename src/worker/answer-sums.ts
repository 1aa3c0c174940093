import { sourcesOf, sums, workSum } from '../engine/evaluate.ts';
import type { SumAnswer, SumCard } from '../report/sum-card.ts';
import type { SumsAnswer, SumsAsk } from './messages.ts';

function cards(): SumCard[] {
  return [...sums.values()].map(({ id, title, topic, inputs, example: { values, from } }) => ({
    id,
    title,
    topic,
    inputs,
    example: { values, from },
  }));
}

function worked(id: string, told: Readonly<Record<string, string>>): SumAnswer {
  const sum = sums.get(id);
  if (!sum) return { ok: false, why: `There is no sum "${id}".` };
  const done = workSum(sum, told);
  return done.ok ? { ...done, sources: sourcesOf(done.working.steps.flatMap((s) => s.cites)) } : done;
}

/** What stands behind a question for sums. Never throws: a slip becomes one sentence. */
export function answerSums(ask: SumsAsk): SumsAnswer {
  if (!('told' in ask)) return { n: ask.n, cards: cards() };
  try {
    return { n: ask.n, answer: worked(ask.sums, ask.told) };
  } catch (error) {
    return { n: ask.n, answer: { ok: false, why: error instanceof Error ? error.message : String(error) } };
  }
}
