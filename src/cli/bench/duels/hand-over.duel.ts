import { sameRecords } from '../../../plan/same-records.ts';
import { defineDuel } from '../duel.ts';
import { demoPlan } from '../houses.ts';

/** A plan goes to the engine's thread as a copy, and its records are found again there. */
export default defineDuel({
  id: 'hand-over',
  ours: 'copy a plan and find the records that are the same as before',
  peer: 'copy a plan',
  atMost: 4,
  prepare() {
    const plan = demoPlan('extension');
    return { ours: () => sameRecords(plan, structuredClone(plan)), peer: () => structuredClone(plan) };
  },
});
