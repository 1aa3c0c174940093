import type { Context } from 'konva/lib/Context';
import { liveFragments } from '../../drawing/live-fragments.ts';
import { styleOf } from '../../drawing/look/style-of.ts';
import { paintItems } from '../../drawing/paint/paint-canvas.ts';
import type { Editor } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { paintCursor } from '../a11y/paint-cursor.ts';
import { livePainted } from '../hands/touched.ts';
import { theme } from '../look/theme.ts';
import { draftItems } from './draft-items.ts';
import type { PaneName } from './draw-counts.ts';
import { frameOf } from './frame-of.ts';

/**
 * Paints what is being made with the camera as it is now. It reads the editor itself, so that no component is rendered
 * while a hand moves.
 */
export function createLivePainter(editor: Editor, name: PaneName): (context: Context) => void {
  const paint = createPainter(editor, name);
  return (context) => {
    paint(context);
    for (const told of livePainted) told(name);
  };
}

function createPainter(editor: Editor, name: PaneName): (context: Context) => void {
  return (context) => {
    const { draft, panes, plan, chosen, cursor } = editor.store.getState();
    const pane = panes[name];
    if (!pane) return;
    const look = styleOf(theme.getState().shown);
    const frame = frameOf(pane);
    const ctx = context._context;
    if (cursor?.pane === name) paintCursor(ctx, pane, cursor, look);
    if (!draft) return;
    if (draft.plan && draft.moved.size > 0) {
      for (const f of liveFragments(plan, draft.plan, pane.view, chosen, draft.moved)) {
        paintItems(ctx, f.items, frame, look);
      }
    }
    if (draft.pane !== name) return;
    const plane = workPlane(draft.plan ?? plan, pane.view);
    if (plane) paintItems(ctx, draftItems(draft, plane), frame, look);
  };
}
