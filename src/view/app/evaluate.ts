import type { Editor } from '../../editor/editor-api.ts';
import type { Evaluator } from '../../report/report.ts';
import type { ReportJoin } from './report-store.ts';

/** Asks for a report at the start and after every change of plan or case. Ends when the returned function is called. */
export function keepEvaluated(editor: Editor, evaluate: Evaluator, join: ReportJoin): () => void {
  let stopped = false;
  const ask = (): void => {
    const { plan, chosen, revision } = editor.store.getState();
    join.expect(plan.id, revision, chosen);
    evaluate(plan, chosen, revision).then(
      (report) => {
        if (!stopped) join.arrive(report);
      },
      (error: unknown) => {
        if (!stopped) join.fail(revision, error instanceof Error ? error.message : String(error));
      },
    );
  };
  ask();
  const unsubscribe = editor.store.subscribe((now, before) => {
    if (now.revision !== before.revision || now.plan !== before.plan || now.chosen !== before.chosen) ask();
  });
  return () => {
    stopped = true;
    unsubscribe();
  };
}
