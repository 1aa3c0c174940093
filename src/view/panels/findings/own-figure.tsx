import { useState } from 'react';
import type { FindingLimit } from '../../../report/finding.ts';
import { useEditorState } from '../../app/use-session.ts';
import { LimitForm } from '../inspect/limit-form.tsx';
import { useChange } from '../inspect/use-change.ts';

/** No limit that a sheet gives is longer, hotter or steeper than this in the unit it is told in. */
const MOST = 100_000;

/** What the appliance's own sheet says of the limit a finding is held against: it goes before the general figure. */
export function OwnFigure({ limit }: { readonly limit: FindingLimit }) {
  const change = useChange();
  const [writing, setWriting] = useState(false);
  const own = useEditorState((s) => (limit.own === null ? undefined : s.plan.overrides[limit.own.id]));
  if (writing) {
    const figure = { limit: limit.id, scope: limit.scope, unit: limit.unit, label: 'What its sheet gives' };
    return (
      <LimitForm figure={{ ...figure, min: 0, max: MOST }} own={own} change={change} onDone={() => setWriting(false)} />
    );
  }
  return (
    <div className="own-figure">
      {own && (
        <p className="finding-under">
          Wanted is from its own sheet{own.page === '' ? '' : `, page ${own.page}`}
          {own.note === '' ? '.' : `: ${own.note}`}
        </p>
      )}
      <div className="key-row">
        <button type="button" className="key slight" aria-disabled={change.disabled} onClick={() => setWriting(true)}>
          {own ? 'Change its figure' : 'Its own sheet gives another'}
        </button>
        {own && (
          <button
            type="button"
            className="key slight"
            aria-disabled={change.disabled}
            onClick={() => change.run('override.delete', { override: own.id })}
          >
            General figure again
          </button>
        )}
      </div>
    </div>
  );
}
