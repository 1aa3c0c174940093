import type { Plan } from '../plan/plan.ts';
import type { Acknowledgement } from '../plan/records/statements.ts';
import type { Finding } from './finding.ts';

/** What was said about a finding, and whether it still holds: what was found may have got worse since. */
export interface Acknowledged {
  readonly said: Acknowledgement;
  readonly worse: boolean;
}

/** Further from what is wanted than when it was seen, in the same unit. */
function isWorse(f: Finding, a: Acknowledgement): boolean {
  if (f.found === null || a.found === null) return false;
  if (f.found.unit !== a.found.unit) return true;
  const slack = 10 ** -f.found.digits / 2;
  const hi = f.found.hi ?? Number.POSITIVE_INFINITY;
  const before = a.found.hi ?? Number.POSITIVE_INFINITY;
  if (f.wantedIs === 'atLeast') return f.found.lo < a.found.lo - slack;
  return hi > before + slack;
}

export function acknowledged(plan: Plan, finding: Finding): Acknowledged | null {
  const said = Object.values(plan.acknowledgements).find((a) => a.key === finding.key);
  return said ? { said, worse: isWorse(finding, said) } : null;
}
