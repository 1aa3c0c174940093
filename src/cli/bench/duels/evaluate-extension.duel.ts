import { evaluate } from '../../../engine/evaluate.ts';
import { calibration } from '../calibration.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

export default defineDuel({
  id: 'evaluate-extension',
  ours: 'evaluate the house with a rear extension, everything anew',
  peer: 'the calibration loop',
  atMost: null,
  prepare() {
    const plan = demoPlan('extension');
    return { ours: () => evaluate(structuredClone(plan), AFTER), peer: calibration };
  },
});
