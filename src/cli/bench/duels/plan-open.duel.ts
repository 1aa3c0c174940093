import { readPlan } from '../../../files/format/read-plan.ts';
import { defineDuel } from '../duel.ts';
import { demoText } from '../houses.ts';

export default defineDuel({
  id: 'plan-open',
  ours: 'open a plan: every field checked, every pointer followed',
  peer: 'JSON.parse',
  atMost: null,
  prepare() {
    const text = demoText('two-storey');
    if (readPlan(text).kind !== 'ok') throw new Error('the plan does not open');
    return { ours: () => readPlan(text), peer: () => JSON.parse(text) };
  },
});
