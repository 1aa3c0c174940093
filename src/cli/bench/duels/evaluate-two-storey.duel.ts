import { evaluate } from '../../../engine/evaluate.ts';
import { calibration } from '../calibration.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

export default defineDuel({
  id: 'evaluate-two-storey',
  ours: 'evaluate the demo two-storey, everything anew',
  peer: 'the calibration loop',
  atMost: null,
  prepare() {
    const plan = demoPlan('two-storey');
    return { ours: () => evaluate(structuredClone(plan), AFTER), peer: calibration };
  },
});
