import { useId } from 'react';

/** A length along one of two ways: which, and how far as it was typed. */
export interface Signed {
  readonly back: boolean;
  readonly text: string;
}

export const untold: Signed = { back: false, text: '' };

/** The length in mm, with its sign; 0 where nothing was typed, undefined where it is no number. */
export function signedMm({ back, text }: Signed): number | undefined {
  const said = text.trim().replace(',', '.');
  if (said === '') return 0;
  const mm = Number(said);
  return Number.isFinite(mm) ? (back ? -mm : mm) : undefined;
}

interface Props {
  readonly label: string;
  /** The two ways in words: a keyboard of a phone has no minus. */
  readonly ways: readonly [string, string];
  readonly value: Signed;
  readonly disabled: boolean;
  readonly onChange: (value: Signed) => void;
  readonly onEnter: () => void;
}

export function SignedBox({ label, ways, value, disabled, onChange, onEnter }: Props) {
  const id = useId();
  const way = value.back ? ways[1] : ways[0];
  return (
    <div className="field signed">
      <label className="out-of-sight" htmlFor={id}>
        {label}, mm {way}
      </label>
      <button
        type="button"
        className="key slight"
        aria-label={`${label}: ${way}, change to ${value.back ? ways[0] : ways[1]}`}
        aria-disabled={disabled}
        onClick={() => !disabled && onChange({ ...value, back: !value.back })}
      >
        {way}
      </button>
      <span className="field-box">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          placeholder="0"
          readOnly={disabled}
          aria-invalid={signedMm(value) === undefined}
          value={value.text}
          onChange={(e) => {
            const minus = /^\s*-/.test(e.target.value);
            onChange({ back: minus ? !value.back : value.back, text: e.target.value.replace('-', '') });
          }}
          onKeyDown={(e) => {
            if (e.key !== 'Enter') return;
            e.preventDefault();
            onEnter();
          }}
        />
        <span className="unit">mm</span>
      </span>
    </div>
  );
}
