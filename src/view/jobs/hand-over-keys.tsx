import { drawSvg } from '../../drawing/draw-svg.ts';
import { planView, storeyOf } from '../../editor/panes.ts';
import { writePlan } from '../../files/format/write-plan.ts';
import { fileName, saveText } from '../app/hand-over.ts';
import { nowIso, WRITER } from '../app/storage.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { saveListCsv } from '../panels/save-list.ts';

/** The open job as files: to keep, to send, to print from. */
export function HandOver() {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const storey = useEditorState((s) => storeyOf(s.panes));
  const report = useReport((s) => s.report);
  const savePlan = (): void => {
    const text = writePlan(plan, { savedAt: nowIso(), writer: WRITER, blobs: {} });
    saveText(fileName(plan.name, '.plan.json'), 'application/json', text);
  };
  const saveSvg = (): void => {
    // A sheet has north up, however the plan lies under a wall on the screen.
    const svg = drawSvg(plan, planView(storey), chosen, 'print', { findings: report?.findings ?? [] });
    saveText(fileName(plan.name, '.svg'), 'image/svg+xml', svg);
  };
  return (
    <>
      <h3>Hand over "{plan.name === '' ? 'job without a name' : plan.name}"</h3>
      <div className="key-row">
        <button type="button" className="key slight" onClick={savePlan}>
          Save to file
        </button>
        <button type="button" className="key slight" onClick={saveSvg}>
          Drawing as SVG
        </button>
        <button
          type="button"
          className="key slight"
          aria-disabled={report === null}
          onClick={() => {
            if (report) saveListCsv(plan, report, saveText);
          }}
        >
          List as CSV
        </button>
      </div>
    </>
  );
}
