import { useId, useState } from 'react';
import type { Line } from '../../report/piece.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';

/** Quantity by hand and a note, kept beside what the drawing gives. Empty quantity: only the note is kept. */
export function LineForm({ line, onShow }: { readonly line: Line; readonly onShow: () => void }) {
  const editor = useEditor();
  const readOnly = useEditorState((s) => s.readOnly !== null);
  const [quantity, setQuantity] = useState(line.edited?.quantity == null ? '' : String(line.edited.quantity));
  const [note, setNote] = useState(line.edited?.note ?? '');
  const ids = [useId(), useId()] as const;
  const typed = quantity.trim() === '' ? null : Number(quantity.replace(',', '.'));
  const wrong = typed !== null && !(Number.isFinite(typed) && typed >= 0);
  const keep = (): void => {
    if (wrong) return;
    editor.run('listEdit.set', {
      piece: line.piece,
      size: line.size,
      joining: line.joining,
      madeOn: line.quantity,
      quantity: typed,
      note: note.trim(),
    });
  };
  return (
    <form
      className="list-line-form"
      onSubmit={(e) => {
        e.preventDefault();
        keep();
      }}
    >
      <label className="field" htmlFor={ids[0]}>
        <span className="field-label">
          Quantity by hand (the drawing gives {line.unit === 'm' ? line.quantity.toFixed(1) : line.quantity})
        </span>
        <span className="field-box">
          <input id={ids[0]} inputMode="decimal" value={quantity} onChange={(e) => setQuantity(e.target.value)} />
          <span className="unit">{line.unit === 'm' ? 'm' : ''}</span>
        </span>
        {wrong && <span className="field-wrong">A quantity is a number, 0 or more.</span>}
      </label>
      <label className="field" htmlFor={ids[1]}>
        <span className="field-label">Note</span>
        <span className="field-box">
          <input id={ids[1]} value={note} onChange={(e) => setNote(e.target.value)} />
        </span>
      </label>
      <div className="key-row">
        <button type="submit" className="key slight" aria-disabled={readOnly || wrong}>
          Keep
        </button>
        {line.runs.length > 0 && (
          <button type="button" className="key slight" onClick={onShow}>
            Show on the drawing
          </button>
        )}
      </div>
    </form>
  );
}
