import type { Case, Plan } from '../../../plan/plan.ts';
import { type Finding, OUTCOMES } from '../../../report/finding.ts';
import type { Evaluator } from '../../../report/report.ts';
import type { Way } from './ways-out.ts';

export interface ProvenWay extends Way {
  /** The plan as it would be. */
  readonly plan: Plan;
  /** Corners it adds. */
  readonly corners: number;
}

/** As many are shown; more would be a list to read instead of a way to take. */
const MOST = 3;

/** The finding is gone, and nothing that needs doing has come in its place or got worse. */
export function isCure(before: readonly Finding[], after: readonly Finding[], key: string): boolean {
  const was = new Map(before.map((f) => [f.key, f.outcome]));
  return after.every((f) => {
    if (f.key === key) return false;
    const then = was.get(f.key);
    if (f.outcome === 'note') return true;
    return then !== undefined && OUTCOMES.indexOf(f.outcome) >= OUTCOMES.indexOf(then);
  });
}

export interface Proving {
  readonly plan: Plan;
  readonly chosen: Case;
  readonly before: readonly Finding[];
  readonly key: string;
  /** The plan as the move would leave it; null where it would be refused. */
  readonly preview: (way: Way) => Plan | null;
  readonly evaluate: Evaluator;
  /** True when nobody waits for the answer any more. */
  readonly given: () => boolean;
}

/** Those ways that the engine itself finds nothing against, the least change first. */
export async function provenWays(ways: readonly Way[], proving: Proving): Promise<readonly ProvenWay[]> {
  const { plan, chosen, before, key, preview, evaluate, given } = proving;
  const found: ProvenWay[] = [];
  for (const way of ways) {
    const next = preview(way);
    if (!next || given()) continue;
    const report = await evaluate(next, chosen, 0);
    if (!isCure(before, report.findings, key)) continue;
    const corners = Math.max(0, Object.keys(next.nodes).length - Object.keys(plan.nodes).length);
    found.push({ ...way, plan: next, corners });
  }
  return found.sort((a, b) => a.corners - b.corners || a.mm - b.mm).slice(0, MOST);
}
