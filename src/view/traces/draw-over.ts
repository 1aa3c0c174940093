import { desk, say } from '../app/desk.ts';
import { openChapter } from '../app/screen.ts';
import { putPicture } from './put-picture.ts';

/** Lays a picture under the plan of the open job, and opens the chapter by which it is scaled. */
export async function drawOver(given?: File): Promise<void> {
  const editor = desk.getState().session?.editor;
  if (!editor) return;
  const { readOnly, plan, panes } = editor.store.getState();
  if (readOnly !== null) return;
  const before = Object.keys(plan.blobRefs).length;
  const wrong = await putPicture(editor, panes.plan.view, given);
  if (wrong !== null) say(wrong);
  else if (Object.keys(editor.store.getState().plan.blobRefs).length > before) openChapter('traces');
}
