import type { SumAnswer, SumCard, Sums } from '../report/sum-card.ts';
import type { SumsAnswer, SumsAsk } from './messages.ts';

/** The part of a worker that is used, so that a test can stand one in. */
export interface SumsPort {
  postMessage(ask: SumsAsk): void;
  onmessage: ((event: { readonly data: SumsAnswer }) => void) | null;
  onerror?: ((event: { readonly message: string }) => void) | null;
}

interface Waiting {
  readonly done: (answer: SumsAnswer) => void;
  readonly failed: (error: Error) => void;
}

/** Each question gets its own answer; a breakdown fails all that wait, with the engine's own sentence. */
export function createSums(port: SumsPort): Sums {
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
  const next = (): number => {
    last += 1;
    return last;
  };
  const ask = (question: SumsAsk): Promise<SumsAnswer> =>
    new Promise((done, failed) => {
      waiting.set(question.n, { done, failed });
      port.postMessage(question);
    });
  return {
    async list(): Promise<readonly SumCard[]> {
      const got = await ask({ n: next(), sums: 'list' });
      return 'cards' in got ? got.cards : [];
    },
    async work(sum, told): Promise<SumAnswer> {
      const got = await ask({ n: next(), sums: sum, told });
      return 'answer' in got ? got.answer : { ok: false, why: 'The sum was not answered.' };
    },
  };
}

/** The sums in a thread of their own, so that they never wait for a report. */
export function startSums(): Sums {
  const worker = new Worker(new URL('./evaluate.worker.ts', import.meta.url), { type: 'module' });
  return createSums(worker as unknown as SumsPort);
}
