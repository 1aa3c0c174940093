import { type KeyboardEvent, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { useEditorState } from '../app/use-session.ts';
import { NudgePad, nudgeStep } from './nudge-pad.tsx';

/** Every drag has keys: what is chosen by 10, 50 or 100, four ways and in height. The step is kept. */
export function NudgeKey() {
  const selection = useEditorState((s) => s.selection);
  const step = useStore(nudgeStep, (s) => s.mm);
  const [open, setOpen] = useState(false);
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
          <NudgePad things={selection} />
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
