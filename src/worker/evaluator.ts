import type { Evaluator, Report } from '../report/report.ts';
import type { Answer, Ask } from './messages.ts';

/** The part of a worker that is used, so that a test can stand one in. */
export interface Port {
  postMessage(ask: Ask): void;
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  onerror?: ((event: { readonly message: string }) => void) | null;
}

interface Waiting {
  readonly ask: Omit<Ask, 'n'>;
  readonly told: { readonly report: (r: Report) => void; readonly failed: (e: Error) => void }[];
}

/**
 * Latest wins: at most one evaluation at work and one waiting. An ask that is overtaken while it waits is not worked
 * out; its promise gets the report of the ask that overtook it. A failure rejects with the engine's own sentence.
 */
export function createEvaluator(port: Port): Evaluator {
  let atWork: Waiting | null = null;
  let next: Waiting | null = null;
  let n = 0;
  const send = (waiting: Waiting): void => {
    atWork = waiting;
    n += 1;
    port.postMessage({ n, ...waiting.ask });
  };
  const done = (): Waiting | null => {
    const finished = atWork;
    atWork = null;
    const following = next;
    next = null;
    if (following) send(following);
    return finished;
  };
  port.onmessage = ({ data }) => {
    // After a breakdown an old answer may still come in: it belongs to nobody any more.
    if (!atWork || data.n !== n) return;
    const told = done()?.told ?? [];
    for (const t of told) {
      if (data.ok) t.report(data.report);
      else t.failed(new Error(data.why));
    }
  };
  port.onerror = ({ message }) => {
    for (const t of done()?.told ?? []) t.failed(new Error(message));
  };
  return (plan, chosen, revision) =>
    new Promise<Report>((report, failed) => {
      const ask = { plan, chosen, revision };
      if (!atWork) send({ ask, told: [{ report, failed }] });
      else next = { ask, told: [...(next?.told ?? []), { report, failed }] };
    });
}

/** The engine in a thread of its own. */
export function startEvaluator(): Evaluator {
  const worker = new Worker(new URL('./evaluate.worker.ts', import.meta.url), { type: 'module' });
  return createEvaluator(worker as unknown as Port);
}
