import { type PointerEvent, useRef, useState } from 'react';
import type { UnsafeSituation } from '../../plan/records/basis.ts';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { today } from './say-records.ts';
import { SignatureDrawn } from './signature-drawn.tsx';
import { goOn, inBox, isFull, type Stroke } from './signature-strokes.ts';

type Signature = UnsafeSituation['signed'][number];

interface Props {
  /** True where it was kept. */
  readonly onKeep: (signature: Signature) => boolean;
  readonly onLeave: () => void;
}

/** A box to sign in with finger, pen or mouse; a typed name alone will do. */
export function SignaturePad({ onKeep, onLeave }: Props) {
  const [strokes, setStrokes] = useState<readonly Stroke[]>([]);
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState('');
  const pen = useRef<number | null>(null);
  const place = (e: PointerEvent<HTMLDivElement>) =>
    inBox(e.currentTarget.getBoundingClientRect(), e.clientX, e.clientY);
  const down = (e: PointerEvent<HTMLDivElement>): void => {
    // A second finger, or the heel of a hand, writes nothing.
    if (pen.current !== null || isFull(strokes)) return;
    pen.current = e.pointerId;
    e.currentTarget.setPointerCapture(e.pointerId);
    const at = place(e);
    setWrong('');
    setStrokes((all) => [...all, goOn([], at)]);
  };
  const move = (e: PointerEvent<HTMLDivElement>): void => {
    if (pen.current !== e.pointerId) return;
    const at = place(e);
    setStrokes((all) => (isFull(all) ? all : [...all.slice(0, -1), goOn(all.at(-1) ?? [], at)]));
  };
  const up = (e: PointerEvent<HTMLDivElement>): void => {
    if (pen.current === e.pointerId) pen.current = null;
  };
  const keep = (): void => {
    if (strokes.length === 0 && name.trim() === '') {
      setWrong('Write in the box, or type the name.');
      return;
    }
    if (onKeep({ name: name.trim(), on: today(), strokes: strokes.map((s) => [...s]) })) onLeave();
  };
  return (
    <div className="line-form">
      <TextBox
        label="Name in letters"
        value={name}
        help="By keyboard: the typed name stands for the signature."
        onSet={setName}
      />
      <div
        className="sign-box"
        role="img"
        aria-label={strokes.length === 0 ? 'Box to sign in, empty' : 'Box to sign in, written in'}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
      >
        <SignatureDrawn strokes={strokes} />
        {strokes.length === 0 && <span className="sign-here">Sign here</span>}
      </div>
      {wrong !== '' && (
        <p className="field-wrong" role="alert">
          {wrong}
        </p>
      )}
      <div className="key-row">
        <button type="button" className="key primary slight" onClick={keep}>
          Keep the signature
        </button>
        <button type="button" className="key slight" onClick={() => setStrokes([])}>
          Clear
        </button>
        <button type="button" className="key slight" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </div>
  );
}
