import { useEffect, useState } from 'react';
import type { Editor } from '../../../editor/editor-api.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Finding } from '../../../report/finding.ts';
import type { Evaluator } from '../../../report/report.ts';
import { startEvaluator } from '../../../worker/evaluator.ts';
import { useLate } from '../../app/use-late.ts';
import { useEditor, useEditorState, useReport } from '../../app/use-session.ts';
import { type ProvenWay, provenWays } from './proven-ways.ts';
import { stepWays } from './step-ways.ts';
import { type Way, waysOut } from './ways-out.ts';

let own: Evaluator | undefined;

/** A worker of its own: what is only tried out is never in the way of the report on what is drawn. */
function trying(): Evaluator {
  own ??= startEvaluator();
  return own;
}

const command = (way: Way): readonly [string, unknown] =>
  way.step ? ['leg.step', way.step] : ['leg.move', { leg: way.leg, by: way.by }];

/** Records that are not the same in two plans. */
function changedIds(before: Plan, after: Plan): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const map of ['legs', 'nodes', 'items', 'stretches'] as const) {
    for (const [id, record] of Object.entries(after[map])) if (before[map][id] !== record) ids.add(id);
    for (const id of Object.keys(before[map])) if (!(id in after[map])) ids.add(id);
  }
  for (const leg of Object.values(after.legs)) if (ids.has(leg.a) || ids.has(leg.b)) ids.add(leg.id);
  return ids;
}

function show(editor: Editor, way: ProvenWay | null): void {
  const { plan, panes } = editor.store.getState();
  if (way === null) editor.showDraft(null);
  else {
    const moved = changedIds(plan, way.plan);
    editor.showDraft({ pane: panes.active, lines: [], marks: [], labels: [], moved, plan: way.plan });
  }
}

/** Ways out as the engine allows them; null while they are looked for. */
function useWays(finding: Finding): readonly ProvenWay[] | null {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const before = useReport((s) => (s.waiting ? null : s.report));
  const [ways, setWays] = useState<readonly ProvenWay[] | null>(null);
  useEffect(() => {
    setWays(null);
    if (!before) return;
    let given = false;
    provenWays([...waysOut(plan, finding), ...stepWays(plan, finding)], {
      plan,
      chosen,
      before: before.findings,
      key: finding.key,
      preview: (way) => editor.preview(...command(way)),
      evaluate: trying(),
      given: () => given,
    }).then(
      (found) => {
        if (!given) setWays(found);
      },
      () => {
        // Nothing can be proven: then nothing is offered, and the words of the finding stand.
        if (!given) setWays([]);
      },
    );
    return () => {
      given = true;
    };
  }, [editor, plan, chosen, before, finding]);
  return ways;
}

const sayCorners = (n: number): string => (n === 0 ? '' : `, ${n} more ${n === 1 ? 'corner' : 'corners'}`);

/** Keys that cure a clash: shown on the drawing while they are pointed at, made so by a tap, as one step. */
export default function WaysKeys({ finding }: { readonly finding: Finding }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const ways = useWays(finding);
  const late = useLate(ways === null);
  useEffect(() => () => editor.showDraft(null), [editor]);
  if (ways === null) return late ? <p className="finding-under">looking for a way out</p> : null;
  return (
    <div className="ways">
      {ways.map((way, i) => (
        <button
          key={`${way.leg}${way.label}`}
          type="button"
          className={`key block two-lines${i === 0 ? ' primary' : ''}`}
          aria-disabled={disabled}
          onPointerEnter={() => show(editor, way)}
          onPointerLeave={() => show(editor, null)}
          onFocus={() => show(editor, way)}
          onBlur={() => show(editor, null)}
          onClick={() => {
            if (disabled) return;
            show(editor, null);
            editor.run(...command(way));
          }}
        >
          <span>{way.label}</span>
          <span className="under">
            {way.under}
            {sayCorners(way.corners)}
          </span>
        </button>
      ))}
    </div>
  );
}
