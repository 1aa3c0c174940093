import type { RuleFacts } from '../../../report/rule-facts.ts';
import { useReport } from '../../app/use-session.ts';
import { keyed } from '../keyed.ts';
import { Cites } from '../rows/cites.tsx';
import { SumRow } from '../rows/sum-row.tsx';

const BASIS: Readonly<Record<RuleFacts['basis'], string>> = {
  law: 'Law.',
  requirement: 'Asked for by a standard or regulation.',
  recommendation: 'Recommended.',
  practice: 'Common practice, no source.',
};

/** The rule behind a finding: what it asks, how binding it is, and every figure it goes by with its source. */
export function RuleTold({ rule }: { readonly rule: string }) {
  const facts = useReport((s) => s.report?.rules.find((r) => r.id === rule));
  if (facts === undefined) return null;
  return (
    <details className="finding-working">
      <summary>The rule</summary>
      <p className="finding-why">{facts.asks}</p>
      <p className="finding-under">
        {BASIS[facts.basis]}
        {facts.needs.length > 0 && ` It needs: ${facts.needs.join('; ')}.`}
      </p>
      {keyed(facts.figures, (f) => f.title).map(({ key, item: f }) => (
        <SumRow key={key} row={{ kind: 'sum', label: f.title, how: '', result: f.figure, cites: [f.cite], ids: [] }} />
      ))}
      {facts.figures.length === 0 && <Cites cites={facts.cites} />}
    </details>
  );
}
