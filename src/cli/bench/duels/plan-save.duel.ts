import { writePlan } from '../../../files/format/write-plan.ts';
import { defineDuel } from '../duel.ts';
import { demoPlan } from '../houses.ts';

export default defineDuel({
  id: 'plan-save',
  ours: 'save a plan',
  peer: 'JSON.stringify',
  atMost: null,
  prepare() {
    const plan = demoPlan('two-storey');
    const whole = { savedAt: '2026-05-01T09:00:00.000Z', writer: 'bench', blobs: {} };
    return { ours: () => writePlan(plan, whole), peer: () => JSON.stringify(plan, null, 1) };
  },
});
