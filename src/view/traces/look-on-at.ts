import type { Editor } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import type { Xy } from '../../plan/records/parts.ts';

/**
 * A picture that was enlarged about a place is looked at as before: only the drawing's scale is another. Where a house is drawn
 * already it is the house that stays as it is seen, and the picture that comes to fit it.
 */
export function lookOnAt(editor: Editor, about: Xy, factor: number): void {
  const { plan, panes } = editor.store.getState();
  const pane = panes[panes.active] ?? panes.plan;
  const plane = workPlane(plan, pane.view);
  if (!plane || Object.keys(plan.walls).length > 0) return;
  const [x, y] = pane.view.kind === 'face' ? [about.x, about.y] : plane.onto({ ...about, z: 0 });
  const [cx, cy] = pane.camera.centre;
  editor.setCamera(panes.active, {
    centre: [x + (cx - x) * factor, y + (cy - y) * factor],
    mmPerPx: pane.camera.mmPerPx * factor,
  });
}
