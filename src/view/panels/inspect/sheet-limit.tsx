import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { Override } from '../../../plan/records/statements.ts';
import type { Report } from '../../../report/report.ts';
import { useEditorState, useReport } from '../../app/use-session.ts';
import { readNumber } from './typed-value.ts';
import { type Change, useChange } from './use-change.ts';

const UNIT = 'mbar';
const LIMIT = { min: 0.1, max: 100 } as const;

/** The limit that an appliance's gas drop is held against now, as the last report has it. */
export function limitNow(report: Report | null, point: string): number | null {
  for (const section of report?.sections ?? []) {
    for (const row of section.rows) {
      if (row.kind === 'answer' && row.figure.unit === UNIT && row.ids.includes(point)) return row.bar.limit;
    }
  }
  return null;
}

/** The gas drop an appliance's own sheet allows: it goes before the general limit, with the page it stands on. */
export function SheetLimit({ point }: { readonly point: string }) {
  const limit = useEditorState((s) => `gas-drop/${s.plan.basis.gas}`);
  const own = useEditorState((s) =>
    Object.values(s.plan.overrides).find((o) => o.limit === limit && o.scope === point),
  );
  const now = useReport((s) => limitNow(s.report, point));
  const change = useChange();
  const [writing, setWriting] = useState(false);
  if (writing) {
    return <LimitForm own={own} limit={limit} point={point} change={change} onDone={() => setWriting(false)} />;
  }
  const said = own?.value ?? now;
  return (
    <div className="sheet-limit">
      <div className="fact">
        <span className="fact-label">Gas drop allowed</span>
        <span className="fact-figure">{said === null ? 'not known' : `${said.toFixed(2)} ${UNIT}`}</span>
        <span className="fact-say">
          {own ? `from its own sheet${own.page === '' ? '' : `, page ${own.page}`}` : 'the general limit'}
        </span>
      </div>
      {own !== undefined && own.note !== '' && <p className="inspect-says">{own.note}</p>}
      <div className="key-row">
        <button type="button" className="key slight" aria-disabled={change.disabled} onClick={() => setWriting(true)}>
          {own ? 'Change it' : 'Its sheet gives another'}
        </button>
        {own && (
          <button
            type="button"
            className="key slight"
            aria-disabled={change.disabled}
            onClick={() => change.run('override.delete', { override: own.id })}
          >
            General limit again
          </button>
        )}
      </div>
    </div>
  );
}

interface FormProps {
  readonly own: Override | undefined;
  readonly limit: string;
  readonly point: string;
  readonly change: Change;
  readonly onDone: () => void;
}

function LimitForm({ own, limit, point, change, onDone }: FormProps) {
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
    const read = readNumber(value, LIMIT);
    if (!read.ok || typeof read.value !== 'number') setWrong(read.ok ? 'One figure is wanted.' : read.wrong);
    else if (page.trim() === '') setWrong('Say the page of the sheet, so that somebody can look it up.');
    else {
      const told = { value: read.value, unit: UNIT, page: page.trim(), note: note.trim() };
      if (change.run('override.set', { limit, scope: point, ...told })) onDone();
    }
  };
  const boxes = [
    { key: 'value', label: 'Gas drop its sheet allows', text: value, set: setValue, unit: UNIT },
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
      {boxes.map(({ key, label, text, set, unit }, i) => (
        <label key={key} className="field" htmlFor={`${id}${key}`}>
          <span className="field-label">{label}</span>
          <span className="field-box">
            <input
              id={`${id}${key}`}
              ref={i === 0 ? first : null}
              autoComplete="off"
              inputMode={unit === '' ? 'text' : 'decimal'}
              aria-invalid={wrong !== null && (key === 'value' || key === 'page')}
              value={text}
              onChange={(e) => set(e.target.value)}
            />
            {unit !== '' && <span className="unit">{unit}</span>}
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
