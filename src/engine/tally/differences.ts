import { services } from '../../catalogue/services.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Difference } from '../../report/tally.ts';
import { give } from '../given.ts';
import { buildingDifferences } from './building-differences.ts';
import { pointPairs, runPairs } from './pairs.ts';
import { runDifferences, systemOf } from './run-differences.ts';
import { itemDifferences, pointDifferences } from './thing-differences.ts';

const KINDS: readonly Difference['kind'][] = ['moved', 'changed', 'new', 'gone'];

/** Appliances first, then the services in their order, the building last. */
function systemsInOrder(): string[] {
  const own = [...services.values()].sort((a, b) => a.order - b.order).map((s) => systemOf(s.id));
  return ['Appliances and points', ...new Set(own)];
}

/**
 * What is not the same in two cases of a plan: before the work and after it, or after two ways of it. Points and runs
 * are paired by what they are and what they end at, so that a copy with another id is no difference.
 */
export function differences(plan: Plan, from: Case, to: Case): Difference[] {
  const [a, b] = [give(plan, from), give(plan, to)];
  const points = pointPairs(a, b);
  const all = [
    ...pointDifferences(a, b, points),
    ...runDifferences(a, b, runPairs(a, b, points)),
    ...itemDifferences(a, b),
    ...buildingDifferences(a, b),
  ];
  const systems = systemsInOrder();
  const place = (d: Difference): number => {
    const at = systems.indexOf(d.system);
    return at < 0 ? systems.length : at;
  };
  return all
    .map((d, i) => ({ d, i }))
    .sort((p, q) => place(p.d) - place(q.d) || KINDS.indexOf(p.d.kind) - KINDS.indexOf(q.d.kind) || p.i - q.i)
    .map(({ d }) => d);
}
