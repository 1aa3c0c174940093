import type { Editor } from '../../editor/editor-api.ts';
import { screen } from '../app/screen.ts';

/** Folds a face up from a key of the panel. On a phone the sheet that the key stands on would lie over half of it: it goes down. */
export function foldUp(editor: Editor, face: { readonly wall: string; readonly side: 'left' | 'right' }): void {
  screen.setState({ sheetStop: 'low' });
  editor.foldUp(face);
}
