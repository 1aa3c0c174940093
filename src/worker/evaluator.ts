import type { Case, Plan } from '../plan/plan.ts';
import type { Report } from '../report/report.ts';
import type { Answer, Ask } from './messages.ts';

/** The part of a worker that is used, so that a test can stand one in. */
export interface Port {
  postMessage(ask: Ask): void;
  onmessage: ((event: { readonly data: Answer }) => void) | null;
}

export interface EvaluatorPort {
  /** Asks for a report of this plan. While one is being worked out only the newest ask waits; older ones are dropped. */
  ask(plan: Plan, chosen: Case, revision: number): void;
  /** Reports in order of asking, none of them for an ask that a later answer has overtaken. */
  readonly onReport: (listener: (report: Report) => void) => () => void;
  readonly onFailure: (listener: (why: string) => void) => () => void;
  /** How many asks were sent on: one a commit at the most. */
  readonly sent: () => number;
}

/** Latest wins: at most one evaluation at work and one waiting. */
export function createEvaluator(port: Port): EvaluatorPort {
  const reports = new Set<(report: Report) => void>();
  const failures = new Set<(why: string) => void>();
  let busy = false;
  let waiting: Omit<Ask, 'n'> | null = null;
  let n = 0;
  const send = (ask: Omit<Ask, 'n'>): void => {
    busy = true;
    n += 1;
    port.postMessage({ n, ...ask });
  };
  port.onmessage = ({ data }) => {
    busy = false;
    const next = waiting;
    waiting = null;
    if (next) send(next);
    if (data.ok) for (const listener of reports) listener(data.report);
    else for (const listener of failures) listener(data.why);
  };
  const listening =
    <T>(set: Set<T>) =>
    (listener: T) => {
      set.add(listener);
      return () => void set.delete(listener);
    };
  return {
    ask(plan, chosen, revision) {
      const ask = { plan, chosen, revision };
      if (busy) waiting = ask;
      else send(ask);
    },
    onReport: listening(reports),
    onFailure: listening(failures),
    sent: () => n,
  };
}

/** The engine in a thread of its own. */
export function startWorker(): EvaluatorPort {
  const worker = new Worker(new URL('./evaluate.worker.ts', import.meta.url), { type: 'module' });
  return createEvaluator(worker as unknown as Port);
}
