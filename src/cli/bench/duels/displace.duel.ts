import { withChanges } from '../../../network/displace/changes.ts';
import { displace } from '../../../network/displace/displace.ts';
import { buildNetwork } from '../../../network/graph.ts';
import { countingIds } from '../../../plan/ids.ts';
import type { Plan } from '../../../plan/plan.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, manyLegs } from '../houses.ts';

const BOILER = 'B-NB~0';

function moved(plan: Plan): Plan {
  const ids = countingIds(new Set(Object.keys(plan.nodes)));
  const answer = displace(plan, [{ point: BOILER, by: { x: 60, y: 0, z: 0 } }], { ids });
  if (!answer.ok) throw new Error(answer.why);
  return withChanges(plan, answer.changes);
}

export default defineDuel({
  id: 'displace',
  ours: 'move a boiler with its pipes in 3,000 legs',
  peer: 'build the network of those legs',
  atMost: 1,
  prepare() {
    const plan = manyLegs(3000);
    const after = moved(plan);
    if (after.points[BOILER] === plan.points[BOILER]) throw new Error('the boiler stayed');
    return { ours: () => moved(plan), peer: () => buildNetwork(plan, AFTER) };
  },
});
