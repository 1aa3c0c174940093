import { lazy, Suspense, useEffect, useId, useRef, useState } from 'react';
import { acknowledged } from '../../report/acknowledged.ts';
import type { Finding } from '../../report/finding.ts';
import type { Quantity } from '../../report/quantity.ts';
import { lowerSheet, openFinding } from '../app/screen.ts';
import { isFocusLost } from '../app/use-focus-back.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { FindingMark } from '../look/mark.tsx';
import { OwnFigure } from './findings/own-figure.tsx';
import { RuleTold } from './findings/rule-told.tsx';
import { goToFinding } from './go-to-finding.ts';
import { keyed } from './keyed.ts';
import { Cites } from './rows/cites.tsx';
import { sayWithUnit } from './rows/figures.ts';
import { SumRow } from './rows/sum-row.tsx';

/** Ways out are worked out when a finding is told in full, and not before. */
const WaysKeys = lazy(() => import('./ways/ways-keys.tsx'));

function Figures({ finding }: { readonly finding: Finding }) {
  const { found, wanted, wantedIs } = finding;
  if (found === null && wanted === null) return null;
  const bound = wantedIs === 'atLeast' ? 'at least ' : wantedIs === 'atMost' ? 'at most ' : '';
  return (
    <dl className={`found-wanted ${finding.outcome}`}>
      <div>
        <dt>found</dt>
        <dd>{found === null ? 'not known' : sayWithUnit(found)}</dd>
      </div>
      {wanted !== null && (
        <div>
          <dt>wanted</dt>
          <dd>
            {bound}
            {sayWithUnit(wanted)}
          </dd>
        </div>
      )}
    </dl>
  );
}

/** A finding in full: what, found and wanted, why it matters, what to do, where it is from, and what was said of it. */
export function FindingDetail({ finding, name }: { readonly finding: Finding; readonly name: string }) {
  const editor = useEditor();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // Opened from its row, which is gone now.
    if (isFocusLost()) title.current?.focus({ preventScroll: true });
  }, []);
  return (
    <article className="finding-detail">
      <header>
        <FindingMark outcome={finding.outcome} name={name} size={34} />
        <h3 ref={title} tabIndex={-1}>
          {finding.title}
        </h3>
        <button type="button" className="bare-key" aria-label="Back to all findings" onClick={() => openFinding(null)}>
          <Icon name="close" size={20} />
        </button>
      </header>
      <Figures finding={finding} />
      <p className="finding-why">{finding.why}</p>
      <p className="finding-todo">{finding.todo}</p>
      {finding.missing.length > 0 && <p className="finding-missing">Not told: {finding.missing.join(', ')}.</p>}
      {finding.more > 0 && (
        <p className="finding-under">
          At {finding.more} more {finding.more === 1 ? 'place' : 'places'}.
        </p>
      )}
      {finding.unverified && (
        <p className="finding-under">
          <em className="unverified">unverified</em> The figure was not read on its page: check it.
        </p>
      )}
      {finding.lifeSafety && (
        <p className="finding-under">Law or life safety: a note does not take the stop away from the sheet.</p>
      )}
      <Suspense fallback={null}>
        <WaysKeys finding={finding} />
      </Suspense>
      {finding.at !== null && (
        <button
          type="button"
          className="key slight block"
          onClick={() => {
            lowerSheet();
            goToFinding(editor, finding);
          }}
        >
          Go there
        </button>
      )}
      {finding.working !== null && finding.working.steps.length > 0 && (
        <details className="finding-working">
          <summary>Working</summary>
          {keyed(finding.working.steps, (s) => s.label).map(({ key, item: s }) => (
            <SumRow
              key={key}
              row={{ kind: 'sum', label: s.label, how: s.how ?? '', result: s.result, cites: s.cites, ids: [] }}
            />
          ))}
        </details>
      )}
      <Cites cites={finding.cites} />
      <RuleTold rule={finding.rule} />
      {finding.limit && <OwnFigure key={finding.key} limit={finding.limit} />}
      <Acknowledge key={finding.key} finding={finding} />
    </article>
  );
}

/** What of a figure is kept beside a note. */
const bounds = (q: Quantity | null) => (q === null ? null : { lo: q.lo, hi: q.hi, unit: q.unit });

const today = (): string => {
  const d = new Date();
  return [d.getFullYear(), d.getMonth() + 1, d.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
};

function Acknowledge({ finding }: { readonly finding: Finding }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const readOnly = useEditorState((s) => s.readOnly !== null);
  const seen = acknowledged(plan, finding);
  const [writing, setWriting] = useState(false);
  const [note, setNote] = useState('');
  const id = useId();
  if (seen !== null && !writing) {
    return (
      <div className="seen-note">
        <p>
          <strong>{seen.worse ? 'Worse than when it was seen' : 'Seen'}</strong>
          {seen.said.on !== null && `, ${seen.said.on}`}
          {seen.said.by !== '' && `, ${seen.said.by}`}
        </p>
        {seen.said.note !== '' && <p>{seen.said.note}</p>}
        <div className="key-row">
          {seen.worse && (
            <button type="button" className="key slight" aria-disabled={readOnly} onClick={() => setWriting(true)}>
              Seen again
            </button>
          )}
          <button
            type="button"
            className="key slight"
            aria-disabled={readOnly}
            onClick={() => editor.run('acknowledgement.delete', { acknowledgement: seen.said.id })}
          >
            Take the note back
          </button>
        </div>
      </div>
    );
  }
  if (!writing) {
    return (
      <button type="button" className="key block two-lines" aria-disabled={readOnly} onClick={() => setWriting(true)}>
        Seen, leave it with a note
      </button>
    );
  }
  const keep = (): void => {
    const done = editor.run('acknowledgement.set', {
      key: finding.key,
      note: note.trim(),
      on: today(),
      found: bounds(finding.found),
      wanted: bounds(finding.wanted),
    });
    if (done.ok) setWriting(false);
  };
  return (
    <form
      className="seen-form"
      onSubmit={(e) => {
        e.preventDefault();
        keep();
      }}
    >
      <label className="field" htmlFor={id}>
        <span className="field-label">Why it may stay</span>
        <span className="field-box">
          <textarea id={id} rows={3} value={note} onChange={(e) => setNote(e.target.value)} />
        </span>
      </label>
      <div className="key-row">
        <button type="submit" className="key primary slight">
          Keep the note
        </button>
        <button type="button" className="key slight" onClick={() => setWriting(false)}>
          Leave it
        </button>
      </div>
    </form>
  );
}
