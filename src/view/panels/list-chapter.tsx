import { useState } from 'react';
import { byFamily, FAMILY_NAMES } from '../../files/format/list-lines.ts';
import { listText } from '../../files/format/list-text.ts';
import type { Line } from '../../report/piece.ts';
import { copyText, saveText } from '../app/hand-over.ts';
import { useEditor, useEditorState, useReport } from '../app/use-session.ts';
import { LineForm } from './line-form.tsx';
import { sayQuantityOf, sayWhat } from './list-text.ts';
import { saveListCsv } from './save-list.ts';
import { showIds } from './show-ids.ts';
import './list.css';

/** What to buy, down to the last reducer. A tap on a line changes its quantity or leaves a note. */
export function ListChapter() {
  const report = useReport((s) => s.report);
  const plan = useEditorState((s) => s.plan);
  const [open, setOpen] = useState<string | null>(null);
  const [done, setDone] = useState('');
  if (report === null) return <p className="empty-chapter">Working it out.</p>;
  if (report.lines.length === 0) return <p className="empty-chapter">Nothing is drawn that has to be bought.</p>;
  const copy = async (): Promise<void> => {
    setDone((await copyText(listText(report.lines, plan.name))) ? 'Copied.' : 'The browser did not let it be copied.');
  };
  return (
    <>
      <div className="key-row list-keys">
        <button type="button" className="key slight" onClick={() => void copy()}>
          Copy as text
        </button>
        <button type="button" className="key slight" onClick={() => saveListCsv(plan, report, saveText)}>
          Save as CSV
        </button>
      </div>
      <p className="list-done" role="status">
        {done}
      </p>
      {byFamily(report.lines).map(([family, lines]) => (
        <section key={family} className="list-family">
          <h3>{FAMILY_NAMES[family]}</h3>
          <ul>
            {lines.map((l) => (
              <ListLine
                key={l.key}
                line={l}
                open={open === l.key}
                onOpen={() => setOpen(open === l.key ? null : l.key)}
              />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function ListLine({
  line,
  open,
  onOpen,
}: {
  readonly line: Line;
  readonly open: boolean;
  readonly onOpen: () => void;
}) {
  const editor = useEditor();
  const under = [
    line.asked,
    line.unresolved ?? '',
    line.edited?.note ?? '',
    line.edited?.moved ? `drawing moved: now ${line.unit === 'm' ? line.quantity.toFixed(1) : line.quantity}` : '',
  ].filter((t) => t !== '');
  return (
    <li>
      <button type="button" className={`list-line${open ? ' open' : ''}`} aria-expanded={open} onClick={onOpen}>
        <span className="list-what">{sayWhat(line)}</span>
        <span className={`list-quantity${line.edited?.quantity != null ? ' edited' : ''}`}>{sayQuantityOf(line)}</span>
        {(under.length > 0 || line.unverified) && (
          <span className="list-under">
            {under.join('; ')} {line.unverified && <em className="unverified">unverified</em>}
          </span>
        )}
      </button>
      {open && <LineForm line={line} onShow={() => showIds(editor, line.runs)} />}
    </li>
  );
}
