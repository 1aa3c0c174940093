import { type KeyboardEvent, useRef, useState } from 'react';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { nudge } from './nudge.ts';

const STEPS = [10, 50, 100] as const;
const WAYS = [
  { word: 'left', dx: -1, dy: 0 },
  { word: 'right', dx: 1, dy: 0 },
  { word: 'up the sheet', dx: 0, dy: 1 },
  { word: 'down the sheet', dx: 0, dy: -1 },
] as const;

/** Every drag has keys: the chosen thing by 10, 50 or 100, four ways. The step is kept while something is chosen. */
export function NudgeKey() {
  const editor = useEditor();
  const selection = useEditorState((s) => s.selection);
  const [open, setOpen] = useState(false);
  const [step, setStep] = useState<number>(10);
  const opener = useRef<HTMLButtonElement>(null);
  const closeBy = (e: KeyboardEvent): void => {
    if (e.key !== 'Escape' || !open) return;
    e.stopPropagation();
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <>
      {open && (
        <fieldset className="plain-set nudge-pad" onKeyDown={closeBy}>
          <legend className="out-of-sight">Nudge</legend>
          <div className="key-row">
            {STEPS.map((s) => (
              <button key={s} type="button" className="key slight" aria-pressed={s === step} onClick={() => setStep(s)}>
                {s}
              </button>
            ))}
          </div>
          <div className="nudge-cross">
            {WAYS.map((w, i) => (
              <button
                key={w.word}
                type="button"
                className={`key slight way-${i}`}
                aria-label={`${step} ${w.word}`}
                onClick={() => nudge(editor, selection, w.dx * step, w.dy * step)}
              >
                <Icon name="up" size={22} />
              </button>
            ))}
          </div>
        </fieldset>
      )}
      <button
        ref={opener}
        type="button"
        className="key end"
        aria-expanded={open}
        onKeyDown={closeBy}
        onClick={() => setOpen(!open)}
      >
        <span className="under">nudge</span>
        by {step}
      </button>
    </>
  );
}
