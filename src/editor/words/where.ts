import type { Xy } from '../../plan/records/parts.ts';
import type { Editor } from '../editor-api.ts';
import { viewIndex } from '../hit/view-index.ts';
import { planView, storeyOf } from '../panes.ts';
import type { Base } from './lay-leg.ts';
import { facingOf, TO_THE_RIGHT, type Told, toldRun } from './told-run.ts';
import type { WordsState } from './words-api.ts';

/** A run on a page with a drawing starts this far under it, so that it can be told before it is dragged in. */
const BELOW_MM = 1500;

export function tell(editor: Editor, run: string | null): Told | undefined {
  const { plan, chosen } = editor.store.getState();
  return run === null ? undefined : toldRun(plan, chosen, run);
}

/** Where the next leg starts; undefined before anything was told to start at. */
export function baseOf(editor: Editor, state: WordsState): Base | undefined {
  const told = tell(editor, state.run);
  if (told) return { is: 'node', node: told.end, run: told.run };
  if (state.branchAt !== null) return { is: 'node', node: state.branchAt, run: null };
  return state.tail ? { is: 'tail', ...state.tail } : undefined;
}

/** What somebody faces who has walked as far as this: a branch starts out facing as the run it leaves. */
export function facingNow(editor: Editor, state: WordsState): Xy {
  const { plan } = editor.store.getState();
  const told = tell(editor, state.run);
  const stem = told ? undefined : tell(editor, state.waiting.at(-1) ?? null);
  const before = told?.steps.at(-1) ?? stem?.steps.findLast((s) => s.to === state.branchAt) ?? stem?.steps.at(-1);
  const start = state.tail && facingOf(plan, state.tail.point, state.tail.connection);
  return before?.facing ?? start ?? TO_THE_RIGHT;
}

export function startPlace(editor: Editor): { storey: string; at: Xy } {
  const { plan, panes, chosen } = editor.store.getState();
  const storey = storeyOf(panes);
  const box = viewIndex(plan, planView(storey), chosen)?.box;
  return { storey, at: box ? { x: box.minX, y: box.minY - BELOW_MM } : { x: 0, y: 0 } };
}
