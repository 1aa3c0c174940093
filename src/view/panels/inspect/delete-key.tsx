import type { Selected } from '../../../editor/editor-api.ts';
import { useEditor, useEditorState } from '../../app/use-session.ts';
import { Icon } from '../../look/icon.tsx';

/**
 * Deleting is one step of undo like any other, so nobody is asked whether they are sure. Surveyed pipework after the
 * work is marked to strip out instead: it is still in the house.
 */
export function DeleteKey({ of, word }: { readonly of: Selected; readonly word: string }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const remove = (): void => {
    if (!disabled && editor.run('things.delete', { things: [of] }).ok) editor.select([]);
  };
  return (
    <button type="button" className="key slight" aria-disabled={disabled} onClick={remove}>
      <Icon name="bin" size={20} />
      Delete {word}
    </button>
  );
}
