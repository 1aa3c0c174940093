import { give } from '../../../engine/evaluate.ts';
import { capsuleGap } from '../../../geometry/segments.ts';
import type { Plan } from '../../../plan/plan.ts';
import { figure } from '../../../reference/figure.ts';
import { edition } from '../../../reference/tables.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, manyLegs } from '../houses.ts';

const keyOf = (a: string, b: string): string => (a < b ? `${a}|${b}` : `${b}|${a}`);

/** Runs nearer each other than the tables ask of gas, by every pair of legs there is. */
function allPairs(plan: Plan): Set<string> {
  const { pipes } = give(plan, AFTER);
  const table = edition('gas-clearance', plan.basis.editions);
  const clear = table && figure(table, 'pipe', 'mm');
  const reach = clear?.is === 'known' ? clear.lo : 0;
  const found = new Set<string>();
  for (const [i, one] of pipes.entries()) {
    for (const other of pipes.slice(i + 1)) {
      if (one.run !== other.run && capsuleGap(one.body, other.body).gapMm < reach) found.add(keyOf(one.run, other.run));
    }
  }
  return found;
}

export default defineDuel({
  id: 'clash-index',
  ours: 'clashes of 1,000 legs by box, network and index built each time',
  peer: 'distance of all pairs, the network built each time',
  atMost: 0.5,
  prepare() {
    const plan = manyLegs(1000);
    const ours = () => give(plan, AFTER).clashes;
    const near = allPairs(plan);
    const clashes = ours();
    const lost = clashes.filter((c) => !near.has(keyOf(...c.runs)));
    if (clashes.length === 0 || lost.length > 0) throw new Error('the index finds other clashes');
    return { ours, peer: () => allPairs(plan) };
  },
});
