import { useStore } from 'zustand';
import { reachKey } from '../../drawing/reach/reach-drawing.ts';
import type { ReachAnswer } from '../../report/report.ts';
import type { Row, Section } from '../../report/section.ts';
import { lowerSheet } from '../app/screen.ts';
import { useEditor, useEditorState, useReport } from '../app/use-session.ts';
import { reachShown } from '../stage/reach-shown.ts';
import { choose } from './choose.ts';
import { keyed } from './keyed.ts';
import { RowView } from './rows/row-view.tsx';
import { VerdictRow } from './rows/verdict-row.tsx';
import { showIds } from './show-ids.ts';

const sayRow = (row: Row): string => `${row.kind} ${'label' in row ? row.label : row.say}`;

/** The answer a row tells. */
function answerOf(row: Extract<Row, { kind: 'verdict' }>, all: readonly ReachAnswer[]): string | null {
  const found = all.find((a) => a.end === row.ids[0] && a.say === row.say);
  return found ? reachKey(found) : null;
}

/** To the floor the ways are on, where another is looked at. */
function FloorKey({ answers }: { readonly answers: readonly ReachAnswer[] }) {
  const editor = useEditor();
  const shown = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const storeys = useEditorState((s) => s.plan.storeys);
  const of = storeys[answers[0]?.storey ?? ''];
  if (!of || answers.some((a) => a.storey === shown)) return null;
  return (
    <button
      type="button"
      className="key slight"
      onClick={() => {
        editor.setStorey(of.id);
        lowerSheet();
      }}
    >
      Show the {of.name.toLowerCase()}
    </button>
  );
}

/** Where water can run: the ways are on the plan while this is open. A tap on one brings it forward. */
export function ReachChapter({ section }: { readonly section: Section }) {
  const editor = useEditor();
  const answers = useReport((s) => s.report?.reach) ?? [];
  const waiting = useReport((s) => s.waiting);
  const { kept, looked } = useStore(reachShown);
  return (
    <>
      <div className="reach-keys">
        <button
          type="button"
          className="key slight reach-key"
          aria-pressed={kept}
          onClick={() => reachShown.setState({ kept: !kept })}
        >
          Keep the ways on the plan
        </button>
        <FloorKey answers={answers} />
      </div>
      {keyed(section.rows, sayRow).map(({ key, item: row }) => {
        if (row.kind !== 'verdict') {
          return (
            <RowView
              key={key}
              row={row}
              doing={{
                title: section.title,
                paler: waiting,
                second: false,
                onChoose: (picked) => choose(editor, picked),
                onShow: (ids) => showIds(editor, ids),
              }}
            />
          );
        }
        const own = answerOf(row, answers);
        return (
          <VerdictRow
            key={key}
            row={row}
            pressed={own !== null && own === looked}
            onShow={() => {
              reachShown.setState({ looked: own === looked ? null : own });
              lowerSheet();
            }}
          />
        );
      })}
    </>
  );
}
