import type { LegFacts } from '../../../report/report.ts';

const range = (lo: number, hi: number | null, digits: number, unit: string): string => {
  const low = lo.toFixed(digits);
  if (hi === null) return `at least ${low} ${unit}`;
  const high = hi.toFixed(digits);
  return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`;
};

/** What the sums say of one leg. */
export function LegFactRows({ facts }: { readonly facts: LegFacts }) {
  const rows = [
    { label: 'Fittings', say: facts.fittings.join(', ') },
    {
      label: 'Equivalent length',
      say: facts.equivalentM ? range(facts.equivalentM.lo, facts.equivalentM.hi, 1, 'm') : '',
    },
    { label: 'Flow', say: facts.flowM3PerH ? range(facts.flowM3PerH.lo, facts.flowM3PerH.hi, 2, 'm³/h') : '' },
    { label: 'Gas drop', say: facts.dropMbar ? range(facts.dropMbar.lo, facts.dropMbar.hi, 2, 'mbar') : '' },
  ].filter((r) => r.say !== '');
  return (
    <div>
      {rows.map((r) => (
        <div key={r.label} className="fact">
          <span className="fact-label">{r.label}</span>
          <span className="fact-figure">{r.say}</span>
        </div>
      ))}
    </div>
  );
}
