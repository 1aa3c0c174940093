import { byWorst, type Finding, type Outcome } from '../../report/finding.ts';

const LETTER: Readonly<Record<Outcome, string>> = { stop: 'S', check: 'C', note: 'N', cantTell: '?' };

/** "S1", "C2", "?1" by finding key: the same in panel, drawing and sheet. Numbered within each class, worst first. */
export function nameFindings(findings: readonly Finding[]): ReadonlyMap<string, string> {
  const counts = new Map<Outcome, number>();
  const names = new Map<string, string>();
  for (const finding of [...findings].sort(byWorst)) {
    if (names.has(finding.key)) continue;
    const n = (counts.get(finding.outcome) ?? 0) + 1;
    counts.set(finding.outcome, n);
    names.set(finding.key, `${LETTER[finding.outcome]}${n}`);
  }
  return names;
}
