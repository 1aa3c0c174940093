import { useEffect, useId, useState } from 'react';
import type { Field } from '../../../plan/records/pipework.ts';
import { type NumberBounds, readNumber, showNumber } from './typed-value.ts';

interface Props extends NumberBounds {
  readonly label: string;
  readonly value: Field | undefined;
  readonly help?: string | undefined;
  readonly disabled?: boolean;
  /** True where it was taken; false puts the old figure back. */
  readonly onSet: (value: number | { readonly lo: number; readonly hi: number } | null) => boolean;
}

/** A figure that is typed. It is set on Enter or on leaving the box, as one step; Escape puts the old one back. */
export function NumberBox({ label, value, unit, help, disabled = false, onSet, ...bounds }: Props) {
  const id = useId();
  const shown = showNumber(value);
  const [text, setText] = useState(shown);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    setText(shown);
    setWrong(null);
  }, [shown]);
  const set = (): void => {
    setWrong(null);
    if (text.trim() === shown) return;
    const read = readNumber(text, { ...bounds, unit });
    if (!read.ok) setWrong(read.wrong);
    else if (!onSet(read.value)) setText(shown);
    // "0.85 m" over 850 sets nothing new, and still is to be read as what is held.
    else if (typeof read.value === 'number') setText(showNumber(read.value));
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <span className="field-box">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          placeholder={bounds.empty ? 'not told' : ''}
          aria-invalid={wrong !== null}
          aria-describedby={wrong !== null || help !== undefined ? `${id}-more` : undefined}
          readOnly={disabled}
          value={text}
          onChange={(e) => setText(e.target.value)}
          onFocus={(e) => e.target.select()}
          onBlur={set}
          onKeyDown={(e) => {
            if (e.key === 'Enter') {
              e.preventDefault();
              set();
            } else if (e.key === 'Escape') {
              e.stopPropagation();
              setText(shown);
              setWrong(null);
            }
          }}
        />
        {unit !== undefined && unit !== '' && <span className="unit">{unit}</span>}
      </span>
      {wrong !== null ? (
        <p className="field-wrong" id={`${id}-more`} role="alert">
          {wrong}
        </p>
      ) : (
        help !== undefined && (
          <p className="field-help" id={`${id}-more`}>
            {help}
          </p>
        )
      )}
    </div>
  );
}
