import type { Editor, EditorState } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';

/** Across and right of the sheet must be one way for a face to stand over its plan. */
const ALONG = 0.999;

/** x of the sheet at the face's own 0, where the face reads the same way as the plan; undefined where it does not. */
function originX(state: EditorState): number | undefined {
  const view = state.panes.face?.view;
  const plane = view && workPlane(state.plan, view);
  if (!plane) return undefined;
  const at = plane.place([0, 0], 0);
  const on = plane.place([1, 0], 0);
  return on.x - at.x > ALONG ? at.x : undefined;
}

/**
 * Keeps a folded-up face over its plan: same scale, same x, so that a pipe can be followed straight up. A wall that reads
 * the other way keeps only the scale. Ends when the returned function is called.
 */
export function keepFolded(editor: Editor): () => void {
  let busy = false;
  return editor.store.subscribe((now, before) => {
    const { plan, face } = now.panes;
    if (busy || !face) return;
    const faceMoved = before.panes.face?.camera !== face.camera && before.panes.face !== null;
    const planMoved = before.panes.plan.camera !== plan.camera;
    const opened = before.panes.face === null || before.panes.face.view !== face.view;
    if (!faceMoved && !planMoved && !opened) return;
    const x0 = originX(now);
    busy = true;
    if (faceMoved && !opened) {
      const x = x0 === undefined ? plan.camera.centre[0] : face.camera.centre[0] + x0;
      editor.setCamera('plan', { centre: [x, plan.camera.centre[1]], mmPerPx: face.camera.mmPerPx });
    } else {
      const x = x0 === undefined ? face.camera.centre[0] : plan.camera.centre[0] - x0;
      editor.setCamera('face', { centre: [x, face.camera.centre[1]], mmPerPx: plan.camera.mmPerPx });
    }
    busy = false;
  });
}
