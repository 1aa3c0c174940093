import { useEffect, useRef, useState } from 'react';
import { facesWorstFirst } from '../../drawing/flue-face/worst-first.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import { Notices } from '../app/notices.tsx';
import { setOver } from '../app/screen.ts';
import { useFocusBack } from '../app/use-focus-back.ts';
import { useEditor, useEditorState, useReport } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { FaceBody } from './face-body.tsx';
import './flue-face.css';
import '../app/dialog.css';

/** The face that is shown: the one asked for while it is there, else that of the chosen terminal, else the worst. */
export function faceShown(
  faces: readonly FlueFace[],
  asked: string | null,
  selected: readonly { readonly id: string }[],
): FlueFace | undefined {
  const of = (id: string | null): FlueFace | undefined => faces.find((f) => f.terminal === id);
  return of(asked) ?? selected.flatMap((s) => of(s.id) ?? [])[0] ?? faces[0];
}

/** The outside of the wall a flue comes out of, and every distance of its terminal, as a sheet of its own. */
export default function FlueFaceScreen() {
  const editor = useEditor();
  const dialog = useRef<HTMLDialogElement>(null);
  useFocusBack();
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  const report = useReport((s) => s.report);
  const selection = useEditorState((s) => s.selection);
  const [asked, setAsked] = useState<string | null>(null);
  const faces = facesWorstFirst(report?.flueFaces ?? []);
  const face = faceShown(faces, asked, selection);
  return (
    <dialog
      ref={dialog}
      className="sheet flue-face"
      aria-label="Flue face"
      onCancel={(e) => {
        e.preventDefault();
        setOver(null);
      }}
      onKeyDown={(e) => {
        if (!(e.ctrlKey || e.metaKey) || e.key.toLowerCase() !== 'z') return;
        e.preventDefault();
        if (e.shiftKey) editor.redo();
        else editor.undo();
      }}
    >
      <header className="sheet-head">
        <h2>Flue face</h2>
        <button type="button" className="bare-key" aria-label="Close" onClick={() => setOver(null)}>
          <Icon name="close" size={22} />
        </button>
      </header>
      {report === null && <p className="flue-none">Working it out.</p>}
      {report !== null && !face && (
        <p className="flue-none">
          No flue terminal stands here. Place one on the outside of a wall, and what is near it is measured on this
          face.
        </p>
      )}
      {face && <FaceBody key={face.terminal} face={face} faces={faces} onTerminal={setAsked} />}
      <Notices />
    </dialog>
  );
}
