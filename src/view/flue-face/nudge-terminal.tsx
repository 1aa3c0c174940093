import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';

export const STEPS_MM = [10, 50, 100] as const;

const WAYS = [
  { word: 'left', across: -1, up: 0 },
  { word: 'up', across: 0, up: 1 },
  { word: 'down', across: 0, up: -1 },
  { word: 'right', across: 1, up: 0 },
] as const;

interface Props {
  readonly step: number;
  readonly disabled: boolean;
  readonly onStep: (mm: number) => void;
  readonly onNudge: (across: number, up: number) => void;
}

/** The terminal by 10, 50 or 100 along its wall or up and down it, and the way back. */
export function NudgeTerminal({ step, disabled, onStep, onNudge }: Props) {
  const editor = useEditor();
  const none = useEditorState((s) => s.history.undo.length === 0);
  return (
    <section className="flue-nudge" aria-label="Nudge the terminal">
      <RadioKeys
        legend="Nudge by"
        legendHidden
        className="choices flue-steps"
        choices={STEPS_MM.map((value) => ({ value, label: `${value}` }))}
        chosen={step as (typeof STEPS_MM)[number]}
        disabled={disabled}
        onChoose={onStep}
      />
      <div className="flue-ways">
        {WAYS.map(({ word, across, up }) => (
          <button
            key={word}
            type="button"
            className={`key slight to-${word}`}
            aria-label={`Terminal ${step} ${word}`}
            aria-disabled={disabled}
            onClick={() => !disabled && onNudge(across, up)}
          >
            <Icon name="up" size={20} />
          </button>
        ))}
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled || none}
          onClick={() => !disabled && !none && editor.undo()}
        >
          Undo
        </button>
      </div>
    </section>
  );
}
