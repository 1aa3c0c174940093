import { useEffect, useId, useState } from 'react';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly help?: string | undefined;
  readonly disabled?: boolean;
  readonly rows?: number;
  readonly onSet: (value: string) => void;
}

/** Words that are typed; set on leaving the box, and on Enter where it has one line. */
export function TextBox({ label, value, help, disabled = false, rows = 1, onSet }: Props) {
  const id = useId();
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  const set = (): void => {
    if (text !== value) onSet(text);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <span className="field-box">
        {rows > 1 ? (
          <textarea
            id={id}
            rows={rows}
            readOnly={disabled}
            value={text}
            onChange={(e) => setText(e.target.value)}
            onBlur={set}
          />
        ) : (
          <input
            id={id}
            autoComplete="off"
            readOnly={disabled}
            value={text}
            onChange={(e) => setText(e.target.value)}
            onBlur={set}
            onKeyDown={(e) => {
              if (e.key === 'Enter') set();
              else if (e.key === 'Escape') {
                e.stopPropagation();
                setText(value);
              }
            }}
          />
        )}
      </span>
      {help !== undefined && <p className="field-help">{help}</p>}
    </div>
  );
}
