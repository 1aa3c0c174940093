import type { Editor, Selected } from '../../editor/editor-api.ts';
import { wayInHouse, workPlane } from '../../editor/input/work-plane.ts';

/** Moves what is chosen by so much, x to the right and y up as it is seen in the pane last touched, as one step. */
export function nudge(editor: Editor, selection: readonly Selected[], dx: number, dy: number): void {
  const { plan, panes } = editor.store.getState();
  const plane = workPlane(plan, (panes[panes.active] ?? panes.plan).view);
  if (plane) editor.run('things.move', { things: selection, by: wayInHouse(plane, [dx, dy]) });
}
