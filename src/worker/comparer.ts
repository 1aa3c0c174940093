import type { Comparer, Difference, Tally } from '../report/tally.ts';
import type { CompareAnswer, CompareAsk } from './messages.ts';

/** The part of a worker that is used, so that a test can stand one in. */
export interface ComparePort {
  postMessage(ask: CompareAsk): void;
  onmessage: ((event: { readonly data: CompareAnswer }) => void) | null;
  onerror?: ((event: { readonly message: string }) => void) | null;
}

interface Waiting {
  readonly done: (answer: CompareAnswer) => void;
  readonly failed: (error: Error) => void;
}

const whyOf = (answer: CompareAnswer): string => ('why' in answer ? answer.why : 'The comparison was not answered.');

/** Each question gets its own answer; a breakdown fails all that wait, with the engine's own sentence. */
export function createComparer(port: ComparePort): Comparer {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  port.onmessage = ({ data }) => {
    waiting.get(data.n)?.done(data);
    waiting.delete(data.n);
  };
  port.onerror = ({ message }) => {
    for (const w of waiting.values()) w.failed(new Error(message));
    waiting.clear();
  };
  const ask = (question: (n: number) => CompareAsk): Promise<CompareAnswer> =>
    new Promise((done, failed) => {
      last += 1;
      waiting.set(last, { done, failed });
      port.postMessage(question(last));
    });
  return {
    async tally(plan, chosen): Promise<Tally> {
      const got = await ask((n) => ({ n, compare: 'tally', plan, chosen }));
      if ('tally' in got) return got.tally;
      throw new Error(whyOf(got));
    },
    async differences(plan, from, to): Promise<readonly Difference[]> {
      const got = await ask((n) => ({ n, compare: 'differences', plan, from, to }));
      if ('differences' in got) return got.differences;
      throw new Error(whyOf(got));
    },
  };
}

/** Comparisons in a thread of their own, so that a report never waits for them. */
export function startComparer(): Comparer {
  const worker = new Worker(new URL('./evaluate.worker.ts', import.meta.url), { type: 'module' });
  return createComparer(worker as unknown as ComparePort);
}
