import type { Cite } from '../../../report/working.ts';
import { useReport } from '../../app/use-session.ts';

/** Two tables of one clause are one place to look it up. */
const keyOf = (c: Cite): string => `${c.source}|${c.clause}`;

/** Where the figures of a row were taken from, source by source. */
export function Cites({ cites }: { readonly cites: readonly Cite[] }) {
  const report = useReport((s) => s.report);
  if (cites.length === 0) return null;
  return (
    <ul className="cites">
      {[...new Map(cites.map((c) => [keyOf(c), c])).values()].map((c) => {
        const source = report?.sources.find((s) => s.id === c.source);
        const title = source?.title ?? c.source;
        // Some titles name the very chapter that is cited.
        const where = title.endsWith(c.clause) ? '' : c.clause;
        return (
          <li key={keyOf(c)}>
            <strong>{title}</strong>
            {where !== '' && <span>, {where}</span>}
            {source?.sureness === 'memory' && <em className="unverified">unverified</em>}
          </li>
        );
      })}
    </ul>
  );
}
