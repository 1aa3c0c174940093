import { useEditor, useEditorState } from '../app/use-session.ts';
import { sayMany } from './say-many.ts';
import './many.css';

const pressSeveral = (editor: ReturnType<typeof useEditor>): void => {
  editor.key({ key: 'several', ctrl: false, shift: false, alt: false });
};

/** Begins choosing several without a keyboard: it stands by the drawing as soon as one thing is chosen. */
export default function SeveralKey() {
  const editor = useEditor();
  const offered = useEditorState((s) => s.tool === 'select' && s.toolState === 'idle' && s.selection.length > 0);
  if (!offered) return null;
  return (
    <button type="button" className="key slight" onClick={() => pressSeveral(editor)}>
      Several
    </button>
  );
}

/** While several are chosen: what is taken so far, how it is done, and the way out. */
export function SeveralBar() {
  const editor = useEditor();
  const on = useEditorState((s) => s.tool === 'select' && (s.toolState === 'several' || s.toolState === 'boxing'));
  const taken = useEditorState((s) => sayMany(s.selection));
  if (!on) return null;
  return (
    <section className="several-bar" aria-label="Choosing several">
      <p aria-live="polite">
        <strong>{taken === '' ? 'nothing yet' : taken}</strong>
        <span>Tap to add or take away. Drag a box: all it touches is added.</span>
      </p>
      <button type="button" className="key slight" onClick={() => pressSeveral(editor)}>
        Done
      </button>
    </section>
  );
}
