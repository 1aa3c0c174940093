import { useState } from 'react';
import type { Report } from '../../../report/report.ts';
import { useEditorState, useReport } from '../../app/use-session.ts';
import { LimitForm } from './limit-form.tsx';
import { useChange } from './use-change.ts';

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
    const figure = { limit, scope: point, unit: UNIT, label: 'Gas drop its sheet allows', ...LIMIT };
    return <LimitForm figure={figure} own={own} change={change} onDone={() => setWriting(false)} />;
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
