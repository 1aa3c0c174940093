import { useId } from 'react';
import type { Choice } from './choice-keys.tsx';

interface Props {
  readonly label: string;
  readonly choices: readonly Choice<string | null>[];
  readonly chosen: string | null;
  readonly help?: string | undefined;
  readonly disabled?: boolean;
  readonly onChoose: (value: string | null) => void;
}

/** One of many, as the device's own list. */
export function SelectBox({ label, choices, chosen, help, disabled = false, onChoose }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <span className="field-box">
        <select
          id={id}
          disabled={disabled}
          value={chosen ?? ''}
          onChange={(e) => onChoose(e.target.value === '' ? null : e.target.value)}
        >
          {choices.map((c) => (
            <option key={c.value ?? ''} value={c.value ?? ''}>
              {c.label}
            </option>
          ))}
        </select>
      </span>
      {help !== undefined && <p className="field-help">{help}</p>}
    </div>
  );
}
