import { type KeyboardEvent, useId } from 'react';

export interface Choice<T> {
  readonly value: T;
  readonly label: string;
}

interface Props<T> {
  readonly label: string;
  readonly choices: readonly Choice<T>[];
  readonly chosen: T;
  readonly help?: string | undefined;
  readonly disabled?: boolean;
  readonly onChoose: (value: T) => void;
}

/** One of a few, as keys in a row: one stop for the tab key, arrows go on to the next. */
export function ChoiceKeys<T extends string | number | boolean | null>({
  label,
  choices,
  chosen,
  help,
  disabled = false,
  onChoose,
}: Props<T>) {
  const id = useId();
  const at = choices.findIndex((c) => c.value === chosen);
  const step = (e: KeyboardEvent<HTMLDivElement>): void => {
    const by =
      e.key === 'ArrowRight' || e.key === 'ArrowDown' ? 1 : e.key === 'ArrowLeft' || e.key === 'ArrowUp' ? -1 : 0;
    const next = choices[(Math.max(at, 0) + by + choices.length) % choices.length];
    if (by === 0 || !next || disabled) return;
    e.preventDefault();
    e.stopPropagation();
    onChoose(next.value);
    const group = e.currentTarget;
    requestAnimationFrame(() => group.querySelector<HTMLElement>('[aria-checked="true"]')?.focus());
  };
  return (
    <div className="field">
      <span className="field-label" id={id}>
        {label}
      </span>
      <div className="choices" role="radiogroup" aria-labelledby={id} onKeyDown={step}>
        {choices.map((c, i) => (
          <RadioKey
            key={String(c.value)}
            label={c.label}
            checked={i === at}
            stop={i === Math.max(at, 0)}
            disabled={disabled}
            onChoose={() => onChoose(c.value)}
          />
        ))}
      </div>
      {help !== undefined && <p className="field-help">{help}</p>}
    </div>
  );
}

interface RadioProps {
  readonly label: string;
  readonly checked: boolean;
  readonly stop: boolean;
  readonly disabled: boolean;
  readonly onChoose: () => void;
}

function RadioKey({ label, checked, stop, disabled, onChoose }: RadioProps) {
  return (
    <button
      type="button"
      role="radio"
      className="key"
      aria-checked={checked}
      aria-disabled={disabled}
      tabIndex={stop ? 0 : -1}
      onClick={() => {
        if (!disabled && !checked) onChoose();
      }}
    >
      {label}
    </button>
  );
}

export const YES_NO: readonly Choice<boolean | null>[] = [
  { value: true, label: 'yes' },
  { value: false, label: 'no' },
  { value: null, label: 'not told' },
];
