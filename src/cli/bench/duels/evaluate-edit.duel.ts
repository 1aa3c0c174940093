import { evaluate } from '../../../engine/evaluate.ts';
import type { Plan } from '../../../plan/plan.ts';
import { calibration } from '../calibration.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

/** Steps made before the clock runs: a hand makes many in a sitting, so the code is warm. */
const WARM = 150;

/** A leg moved up or down: its two nodes are other records, all others stay the same ones. */
function moved(plan: Plan, lift: number): Plan {
  const nodes = { ...plan.nodes };
  for (const node of Object.values(nodes).slice(0, 2)) {
    if (node.place.on !== 'storey') continue;
    const { height } = node.place;
    const mm = (height.mm + lift) as typeof height.mm;
    nodes[node.id] = { ...node, place: { ...node.place, height: { ...height, mm } } };
  }
  return { ...plan, nodes };
}

/** What happens after each step of a hand: all of the plan is evaluated. */
export default defineDuel({
  id: 'evaluate-edit',
  ours: 'evaluate the house with a rear extension after a leg was moved',
  peer: 'the calibration loop',
  atMost: null,
  steady: true,
  aimMs: 15,
  prepare() {
    let last = demoPlan('extension');
    let lift = 0;
    const ours = () => {
      lift = lift === 5 ? -5 : 5;
      last = moved(last, lift);
      return evaluate(last, AFTER);
    };
    for (let i = 0; i < WARM; i++) ours();
    return { ours, peer: calibration };
  },
});
