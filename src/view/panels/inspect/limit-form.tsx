import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { Override } from '../../../plan/records/statements.ts';
import { readNumber } from './typed-value.ts';
import type { Change } from './use-change.ts';

export interface SheetFigure {
  /** Id of the limit, and the thing it is held for; null: everything. */
  readonly limit: string;
  readonly scope: string | null;
  readonly unit: string;
  /** "Gas drop its sheet allows" */
  readonly label: string;
  readonly min: number;
  readonly max: number;
}

interface Props {
  readonly figure: SheetFigure;
  readonly own: Override | undefined;
  readonly change: Change;
  readonly onDone: () => void;
}

/** A figure of the appliance's own sheet in place of the general one, with the page it stands on. */
export function LimitForm({ figure, own, change, onDone }: Props) {
  const { limit, scope, unit } = figure;
  const id = useId();
  const [value, setValue] = useState(own ? String(own.value) : '');
  const [page, setPage] = useState(own?.page ?? '');
  const [note, setNote] = useState(own?.note ?? '');
  const [wrong, setWrong] = useState<string | null>(null);
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => first.current?.focus(), []);
  const keep = (e: FormEvent): void => {
    e.preventDefault();
    if (change.disabled) return;
    const read = readNumber(value, figure);
    if (!read.ok || typeof read.value !== 'number') setWrong(read.ok ? 'One figure is wanted.' : read.wrong);
    else if (page.trim() === '') setWrong('Say the page of the sheet, so that somebody can look it up.');
    else {
      const told = { value: read.value, unit, page: page.trim(), note: note.trim() };
      if (change.run('override.set', { limit, scope, ...told })) onDone();
    }
  };
  const boxes = [
    { key: 'value', label: figure.label, text: value, set: setValue, unit },
    { key: 'page', label: 'Page of the sheet', text: page, set: setPage, unit: '' },
    { key: 'note', label: 'Note', text: note, set: setNote, unit: '' },
  ];
  return (
    <form
      className="sheet-limit form"
      onSubmit={keep}
      onKeyDown={(e) => {
        if (e.key !== 'Escape') return;
        e.stopPropagation();
        onDone();
      }}
    >
      {boxes.map(({ key, label, text, set, unit: shown }, i) => (
        <label key={key} className="field" htmlFor={`${id}${key}`}>
          <span className="field-label">{label}</span>
          <span className="field-box">
            <input
              id={`${id}${key}`}
              ref={i === 0 ? first : null}
              autoComplete="off"
              inputMode={shown === '' ? 'text' : 'decimal'}
              aria-invalid={wrong !== null && (key === 'value' || key === 'page')}
              value={text}
              onChange={(e) => set(e.target.value)}
            />
            {shown !== '' && <span className="unit">{shown}</span>}
          </span>
        </label>
      ))}
      {wrong !== null && (
        <p className="field-wrong" role="alert">
          {wrong}
        </p>
      )}
      <div className="key-row">
        <button type="submit" className="key primary slight">
          Keep the limit
        </button>
        <button type="button" className="key slight" onClick={onDone}>
          Leave it
        </button>
      </div>
    </form>
  );
}
