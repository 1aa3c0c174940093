import { drawSvg } from '../../drawing/draw-svg.ts';
import { planView, storeyOf } from '../../editor/panes.ts';
import { writePlan } from '../../files/format/write-plan.ts';
import { blobsForFile } from '../../files/store/blobs.ts';
import { say } from '../app/desk.ts';
import { fileName, saveText } from '../app/hand-over.ts';
import { setOver } from '../app/screen.ts';
import { nowIso, storage, WRITER } from '../app/storage.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { saveListCsv } from '../panels/save-list.ts';
import { sayLost } from '../photos/say-pictures.ts';

/** The open job as files: to keep, to send, to print from. */
export function HandOver() {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const storey = useEditorState((s) => storeyOf(s.panes));
  const report = useReport((s) => s.report);
  const savePlan = async (): Promise<void> => {
    // A file without its pictures is better than none.
    const none = { blobs: {}, missing: Object.values(plan.blobRefs).map((b) => b.hash) };
    const { blobs, missing } = await storage()
      .then((port) => blobsForFile(port, plan))
      .catch(() => none);
    const text = writePlan(plan, { savedAt: nowIso(), writer: WRITER, blobs });
    saveText(fileName(plan.name, '.plan.json'), 'application/json', text);
    if (missing.length > 0) say(sayLost(missing.length, 'missing'));
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
        <button type="button" className="key slight" onClick={() => setOver('print')}>
          Print or PDF
        </button>
        <button type="button" className="key slight" onClick={() => void savePlan()}>
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
      <p>A file is the only copy that outlives this browser: save one whenever a job matters.</p>
    </>
  );
}
