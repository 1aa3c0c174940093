import { type ReactNode, useId } from 'react';

export interface RadioChoice<T> {
  readonly value: T;
  readonly label: ReactNode;
}

interface Props<T> {
  readonly legend: string;
  readonly legendHidden?: boolean;
  readonly choices: readonly RadioChoice<T>[];
  readonly chosen: T;
  readonly disabled?: boolean;
  /** What is drawn inside the chosen one besides its label. */
  readonly mark?: ReactNode;
  readonly className?: string;
  readonly onChoose: (value: T) => void;
}

/**
 * One of a few as a row of keys. Each is a radio of the page itself, so that the tab key, the arrows and a screen reader
 * find what they expect.
 */
export function RadioKeys<T extends string | number | boolean | null>(props: Props<T>) {
  const {
    legend,
    legendHidden = false,
    choices,
    chosen,
    disabled = false,
    mark,
    className = 'choices',
    onChoose,
  } = props;
  const name = useId();
  return (
    <fieldset className="plain-set">
      <legend className={legendHidden ? 'out-of-sight' : 'field-label'}>{legend}</legend>
      <div className={className}>
        {choices.map((c) => (
          <label key={String(c.value)} className="key radio-key" data-checked={c.value === chosen}>
            <input
              type="radio"
              name={name}
              checked={c.value === chosen}
              aria-disabled={disabled}
              onChange={() => {
                if (!disabled) onChoose(c.value);
              }}
            />
            <span>{c.label}</span>
            {c.value === chosen && mark}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
