import type { CitedSource } from '../../report/report.ts';
import type { Cite, Working } from '../../report/working.ts';
import { keyed } from '../panels/keyed.ts';
import { sayUnit, sayWithUnit } from '../panels/rows/figures.ts';

const where = (cite: Cite, sources: readonly CitedSource[]): string =>
  [sources.find((s) => s.id === cite.source)?.title ?? cite.source, cite.clause].filter(Boolean).join(', ');

const isUnverified = (cites: readonly Cite[], sources: readonly CitedSource[]): boolean =>
  cites.some((c) => sources.find((s) => s.id === c.source)?.sureness === 'memory');

interface Props {
  readonly working: Working;
  readonly sources: readonly CitedSource[];
}

/** A sum in full: the result in large, every line of working with where its figure is from, and what was assumed. */
export function SumWorking({ working, sources }: Props) {
  const { result, steps, missing, assumed } = working;
  const from = (cites: readonly Cite[]): string => cites.map((c) => where(c, sources)).join('; ');
  return (
    <>
      <p className="sum-large">{result === null ? "can't tell" : sayWithUnit(result)}</p>
      {result === null && missing.length > 0 && <p className="sum-wants">Not known: {missing.join(', ')}.</p>}
      {result?.sureness === 'memory' && (
        <p className="finding-under">
          <em className="unverified">unverified</em> A figure in it was not read on its page: check it.
        </p>
      )}
      <ol className="sum-steps">
        {keyed(steps, (s) => s.label).map(({ key, item: s }, i) => (
          <li key={key}>
            <span className="sum">
              <span className="sum-label">{s.label}</span>
              <span className="sum-result">{sayWithUnit(s.result)}</span>
              {s.how !== undefined && s.how !== '' && <span className="sum-how">{sayUnit(s.how)}</span>}
            </span>
            {s.cites.length > 0 && from(s.cites) !== from(steps[i - 1]?.cites ?? []) && (
              <span className="sum-from">
                {from(s.cites)}
                {isUnverified(s.cites, sources) && <em className="unverified">unverified</em>}
              </span>
            )}
          </li>
        ))}
      </ol>
      {assumed.length > 0 && (
        <ul className="sum-assumed">
          {assumed.map((a) => (
            <li key={a}>Assumed: {a}</li>
          ))}
        </ul>
      )}
      <p className="field-help">
        A sum, no more: local rules and the appliance's own instructions go first, and gas work is for registered
        engineers.
      </p>
    </>
  );
}
