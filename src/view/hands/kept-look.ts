import type { Editor } from '../../editor/editor-api.ts';
import type { PaneName } from '../stage/draw-counts.ts';

/** Panes that were put back as they were looked at, and are not fitted to the house when they first get their size. */
const kept = new WeakMap<Editor, Set<PaneName>>();

export const keepLook = (editor: Editor, panes: Iterable<PaneName>): void => void kept.set(editor, new Set(panes));

/** True once for each pane whose camera was put back. */
export const takeKeptLook = (editor: Editor, pane: PaneName): boolean => kept.get(editor)?.delete(pane) ?? false;
