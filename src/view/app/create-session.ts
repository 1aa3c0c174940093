import { createStore } from 'zustand/vanilla';
import { assumptions } from '../../catalogue/assumptions.ts';
import { createEditor } from '../../editor/index.ts';
import type { Claim } from '../../files/store/job-lock.ts';
import type { StorePort } from '../../files/store/store-port.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../report/report.ts';
import { storedGloves } from '../help/stored-gloves.ts';
import { keepEvaluated } from './evaluate.ts';
import { deviceIds } from './ids.ts';
import { type KeptSoFar, keepJob } from './keep-job.ts';
import { createReportJoin } from './report-store.ts';
import type { KeptState, Session } from './session.ts';

export interface SessionParts {
  readonly plan: Plan;
  readonly evaluate: Evaluator;
  readonly port: StorePort;
  /** How far it is kept; null: not at all yet. */
  readonly soFar: KeptSoFar | null;
  /** Why nothing may be changed, in a sentence; null where it may. */
  readonly readOnly: string | null;
  readonly claim: Claim;
  /** Told when the first step of a fresh page has been made. */
  readonly onFirst: (session: Session) => void;
  readonly onTakeOver: (session: Session) => Promise<void>;
}

/** An open job: editor, reports and keeping, joined. */
export function createSession(parts: SessionParts): Session {
  const { plan, evaluate, port, soFar, readOnly, claim } = parts;
  const editor = createEditor({ plan, ids: deviceIds, assumptions: assumptions() });
  if (soFar) editor.restore(plan, soFar.undo, soFar.redo);
  editor.setGloves(storedGloves());
  if (readOnly !== null) editor.setReadOnly(readOnly);
  const join = createReportJoin();
  const stopEvaluating = keepEvaluated(editor, evaluate, join);
  const kept = createStore<KeptState>(() => ({
    at: soFar && claim.mine ? Date.now() : null,
    failed: null,
    elsewhere: !claim.mine,
  }));
  const writable = claim.mine && readOnly === null;
  const keeping = writable ? keepJob(port, editor, soFar, kept, () => parts.onFirst(session)) : null;
  const session: Session = {
    id: plan.id,
    editor,
    report: join.store,
    join,
    kept,
    flush: () => keeping?.flush() ?? Promise.resolve(),
    takeOver: () => parts.onTakeOver(session),
    async close() {
      stopEvaluating();
      await keeping?.stop();
    },
  };
  return session;
}
