import type { Cite } from '../../../report/working.ts';
import { useReport } from '../../app/use-session.ts';

const keyOf = (c: Cite): string => `${c.source}|${c.clause}|${c.table ?? ''}`;

/** Where the figures of a row were taken from, source by source. */
export function Cites({ cites }: { readonly cites: readonly Cite[] }) {
  const report = useReport((s) => s.report);
  if (cites.length === 0) return null;
  return (
    <ul className="cites">
      {[...new Map(cites.map((c) => [keyOf(c), c])).values()].map((c) => {
        const source = report?.sources.find((s) => s.id === c.source);
        const where = [c.clause, c.table === undefined ? '' : `table ${c.table}`].filter((w) => w !== '').join(', ');
        return (
          <li key={keyOf(c)}>
            <strong>{source?.title ?? c.source}</strong>
            {where !== '' && <span>, {where}</span>}
            {source?.sureness === 'memory' && <em className="unverified">unverified</em>}
          </li>
        );
      })}
    </ul>
  );
}
