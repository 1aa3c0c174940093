import type { RunFacts } from '../../report/report.ts';
import type { Working } from '../../report/working.ts';
import { KickTurn } from '../look/kick.tsx';
import { keyed } from './keyed.ts';
import { sayWithUnit } from './rows/figures.ts';
import { SumRow } from './rows/sum-row.tsx';

/** Every sum worked out along a run, closed with its result; open with all its steps and where their figures are from. */
export function RunWorkings({ facts }: { readonly facts: RunFacts }) {
  if (facts.workings.length === 0) return null;
  return (
    <div className="workings">
      <h3>Working</h3>
      {keyed(facts.workings, (w) => w.title).map(({ key, item }) => (
        <OneWorking key={key} working={item} />
      ))}
    </div>
  );
}

function OneWorking({ working }: { readonly working: Working }) {
  const { title, steps, result, missing, assumed } = working;
  return (
    <details className="working">
      <summary>
        <span className="working-title">{title}</span>
        <span className="working-result">{result === null ? "can't tell" : sayWithUnit(result)}</span>
        <KickTurn />
      </summary>
      {keyed(steps, (s) => s.label).map(({ key, item: s }) => (
        <SumRow
          key={key}
          row={{ kind: 'sum', label: s.label, how: s.how ?? '', result: s.result, cites: s.cites, ids: [] }}
        />
      ))}
      {missing.length > 0 && <p className="working-missing">Not told: {missing.join(', ')}.</p>}
      {assumed.map((say) => (
        <p key={say} className="row-assumed">
          <span className="out-of-sight">assumed: </span>
          {say}
        </p>
      ))}
    </details>
  );
}
