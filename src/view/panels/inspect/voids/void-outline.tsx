import { retaken } from '../../../../editor/tools/void-retake.ts';
import { useEditor, useEditorState } from '../../../app/use-session.ts';
import type { VoidPart } from './void-part.ts';

/** The outline is kept as it was drawn: walls that move leave it where it is, until it is taken again. */
export function VoidOutline({ record, disabled, set }: VoidPart) {
  const editor = useEditor();
  const walls = useEditorState((s) => s.plan.walls);
  const chosen = useEditorState((s) => s.chosen);
  const change = walls ? retaken(editor.store.getState().plan, record, chosen) : null;
  if (change === null)
    return <p className="inspect-says">Its outline stays where it was drawn; should walls move, take it again here.</p>;
  return (
    <div className="void-part">
      <p className="inspect-says">This outline is not that of the room: it stays where it was drawn when walls move.</p>
      <button type="button" className="key slight" aria-disabled={disabled} onClick={() => !disabled && set(change)}>
        Take the room's outline again
      </button>
    </div>
  );
}
