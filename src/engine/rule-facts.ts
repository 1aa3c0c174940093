import { tables } from '../reference/tables.ts';
import { roundQuantity } from '../report/quantity.ts';
import type { RuleFacts, RuleFigure } from '../report/rule-facts.ts';
import type { Rule } from './define-rule.ts';
import type { Given } from './given.ts';

const titles = new Map<string, string>();
function titleOf(table: string): string {
  if (titles.size === 0) for (const t of tables()) titles.set(t.id, t.title);
  return titles.get(table) ?? table;
}

/** A rule in words and figures, as the editions of this job have it. Figures nobody has read are left out: its findings say so. */
export function ruleFacts(rule: Rule, given: Given): RuleFacts {
  const figures = Object.values(rule.params(given)).flatMap((p): RuleFigure[] => {
    if (p.is !== 'known') return [];
    const { lo, hi, value, unit, digits, sureness, cite } = p;
    const figure = roundQuantity({ lo, hi, value, unit, digits, sureness });
    return [{ title: titleOf(cite.table), figure, cite }];
  });
  return {
    id: rule.id,
    topic: rule.topic,
    basis: rule.basis,
    lifeSafety: rule.lifeSafety,
    asks: rule.say.pass,
    needs: rule.needs,
    figures,
    cites: rule.cites,
  };
}
