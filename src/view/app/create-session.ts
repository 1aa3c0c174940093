import { createStore } from 'zustand/vanilla';
import { assumptions } from '../../catalogue/assumptions.ts';
import { createEditor } from '../../editor/index.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../report/report.ts';
import { keepEvaluated } from './evaluate.ts';
import { deviceIds } from './ids.ts';
import { createReportJoin } from './report-store.ts';
import type { KeptState, Session } from './session.ts';

export interface SessionParts {
  readonly id: string;
  readonly plan: Plan;
  readonly evaluator: Evaluator;
  readonly readOnly: string | null;
}

/** An editor for a plan, with its reports coming in. Keeping it on the device is joined on by the caller. */
export function createSession({ id, plan, evaluator, readOnly }: SessionParts): Session {
  const editor = createEditor({ plan, ids: deviceIds, assumptions: assumptions() });
  if (readOnly !== null) editor.setReadOnly(readOnly);
  const join = createReportJoin();
  const stopEvaluating = keepEvaluated(editor, evaluator, join);
  const kept = createStore<KeptState>(() => ({ at: null, failed: null, elsewhere: false }));
  return {
    id,
    editor,
    report: join.store,
    join,
    kept,
    takeOver: () => Promise.resolve(),
    close: () => {
      stopEvaluating();
      return Promise.resolve();
    },
  };
}
