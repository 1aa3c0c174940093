import { drawSvg } from '../../drawing/draw-svg.ts';
import { type Example, evaluate, type Rule } from '../../engine/evaluate.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Finding } from '../../report/finding.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const VIEW = { kind: 'plan', storey: 'ground' } as const;
const WORST = ['stop', 'check', 'note', 'cantTell'] as const;

/** An example of a rule with what is said of it there, and its drawing. */
export interface DrawnExample {
  readonly example: Example;
  readonly finding: Finding;
  readonly svg: string;
}

const rank = (e: Example): number => WORST.indexOf(e.expect as (typeof WORST)[number]);

/** What a rule alone says of a plan. */
export const saidBy = (rule: Rule, plan: Plan): Finding[] =>
  evaluate(plan, AFTER).findings.filter((f) => f.rule === rule.id);

export const drawExample = (plan: Plan, findings: readonly Finding[]): string =>
  drawSvg(plan, VIEW, AFTER, 'print', { findings });

/** The example that shows best what a rule is about: the worst one that lies at a place. Undefined where none does. */
export function bestExample(rule: Rule): DrawnExample | undefined {
  const failing = rule.examples.filter((e) => e.expect !== 'pass').sort((a, b) => rank(a) - rank(b));
  for (const example of failing) {
    const plan = example.given();
    const [finding] = saidBy(rule, plan).filter((f) => f.at !== null);
    if (finding) return { example, finding, svg: drawExample(plan, [finding]) };
  }
  return undefined;
}
