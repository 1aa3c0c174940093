import { applyRule } from '../../../src/engine/apply-rule.ts';
import { give, rules } from '../../../src/engine/evaluate.ts';
import type { Case, Plan } from '../../../src/plan/plan.ts';
import type { Finding } from '../../../src/report/finding.ts';

export const AFTER: Case = { option: 'A', when: 'after' };

/** Findings of one rule of a plan, after its option. */
export function findingsOf(rule: string, plan: Plan): Finding[] {
  const found = rules.get(rule);
  if (!found) throw new Error(`no rule ${rule}`);
  return applyRule(found, give(plan, AFTER));
}

export const outcomesOf = (rule: string, plan: Plan): string[] => findingsOf(rule, plan).map((f) => f.outcome);
