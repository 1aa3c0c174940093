import { evaluate } from '../../../engine/evaluate.ts';
import { sameRecords } from '../../../plan/same-records.ts';
import { calibration } from '../calibration.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

/** Steps made before the clock runs. */
const WARM = 100;

/** What happens after each step of a hand: the plan comes over as a copy, and all of it is evaluated. */
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
      const next = structuredClone(last);
      lift = lift === 5 ? -5 : 5;
      for (const node of Object.values(next.nodes).slice(0, 2)) {
        if (node.place.on === 'storey')
          node.place.height.mm = (node.place.height.mm + lift) as typeof node.place.height.mm;
      }
      last = sameRecords(last, next);
      return evaluate(last, AFTER);
    };
    // A hand makes many steps in a sitting, so the code is warm.
    for (let i = 0; i < WARM; i++) ours();
    return { ours, peer: calibration };
  },
});
