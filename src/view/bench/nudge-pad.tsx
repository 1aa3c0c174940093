import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Selected } from '../../editor/editor-api.ts';
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
const HEIGHTS = [
  { word: 'higher', dz: 1 },
  { word: 'lower', dz: -1 },
] as const;

/** The step in hand, mm: the same wherever the keys stand. */
export const nudgeStep = createStore<{ readonly mm: number }>(() => ({ mm: STEPS[0] }));

/** Four ways as it is seen, and up or down in height, by 10, 50 or 100. */
export function NudgePad({ things }: { readonly things: readonly Selected[] }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const step = useStore(nudgeStep, (s) => s.mm);
  const by = (dx: number, dy: number, dz = 0): void => {
    if (!disabled) nudge(editor, things, dx * step, dy * step, dz * step);
  };
  return (
    <>
      <fieldset className="plain-set key-row nudge-steps">
        <legend className="out-of-sight">Step, mm</legend>
        {STEPS.map((s) => (
          <button
            key={s}
            type="button"
            className="key slight"
            aria-pressed={s === step}
            onClick={() => nudgeStep.setState({ mm: s })}
          >
            {s}
          </button>
        ))}
      </fieldset>
      <div className="nudge-ways">
        <div className="nudge-cross">
          {WAYS.map((w, i) => (
            <button
              key={w.word}
              type="button"
              className={`key slight way-${i}`}
              aria-label={`${step} ${w.word}`}
              aria-disabled={disabled}
              onClick={() => by(w.dx, w.dy)}
            >
              <Icon name="up" size={22} />
            </button>
          ))}
        </div>
        <div className="nudge-heights">
          {HEIGHTS.map((h) => (
            <button
              key={h.word}
              type="button"
              className="key slight"
              aria-label={`${step} ${h.word}`}
              aria-disabled={disabled}
              onClick={() => by(0, 0, h.dz)}
            >
              {h.word}
            </button>
          ))}
        </div>
      </div>
    </>
  );
}
