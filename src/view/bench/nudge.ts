import type { Editor, Selected } from '../../editor/editor-api.ts';

/** Moves what is chosen by so much, x to the right and y up the sheet, as one step. */
export function nudge(editor: Editor, selection: readonly Selected[], dx: number, dy: number): void {
  editor.run('things.move', { things: selection, by: { x: dx, y: dy, z: 0 } });
}
