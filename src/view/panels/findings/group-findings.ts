import { type Finding, OUTCOMES, type Outcome } from '../../../report/finding.ts';

/** By what the findings are put together. */
export type GroupBy = 'worst' | 'place' | 'topic';

export interface FindingGroup {
  /** Empty where all stand together. */
  readonly title: string;
  readonly findings: readonly Finding[];
}

const rank = (f: Finding): number => OUTCOMES.indexOf(f.outcome);
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/**
 * Findings in groups, worst first within each, and the group with the worst first. `placeOf` names the room or floor of
 * a finding. The order of findings that are as bad stays as it came.
 */
export function groupFindings(
  findings: readonly Finding[],
  by: GroupBy,
  placeOf: (finding: Finding) => string,
): FindingGroup[] {
  const sorted = [...findings].sort((a, b) => rank(a) - rank(b));
  if (by === 'worst') return sorted.length === 0 ? [] : [{ title: '', findings: sorted }];
  const groups = new Map<string, Finding[]>();
  for (const f of sorted) {
    const title = by === 'place' ? placeOf(f) : capital(f.topic);
    const here = groups.get(title);
    if (here) here.push(f);
    else groups.set(title, [f]);
  }
  return [...groups].map(([title, of]) => ({ title, findings: of }));
}

/** How many there are of each kind, worst first; kinds without any are left out. */
export function countOutcomes(findings: readonly Finding[]): { readonly outcome: Outcome; readonly count: number }[] {
  return OUTCOMES.map((outcome) => ({ outcome, count: findings.filter((f) => f.outcome === outcome).length })).filter(
    (c) => c.count > 0,
  );
}
