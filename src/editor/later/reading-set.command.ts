import * as v from 'valibot';
import { reading } from '../../plan/records/basis.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { writeLine } from '../commands/job-lines.ts';

const at = v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)));

/** What was read on the day of the survey. Without `at` a new line. */
export default defineCommand({
  id: 'reading.set',
  label: (args) => `reading: ${args.line.what}`,
  args: v.object({ at, line: reading }),
  run(draft, { at, line }) {
    if (line.what.trim() === '') refuse('Say what was read.');
    if (line.value !== null && line.value < 0)
      refuse(`A reading is not less than nothing: ${line.what}, ${line.value}.`);
    writeLine(draft, 'readings', at, line);
    return [];
  },
  example(plan, rng) {
    const value = rng.pick([null, 21.3, -1]) ?? null;
    const line = { what: 'standing gas pressure', value, unit: 'mbar', on: null, place: 'meter', note: '' };
    const at = rng.pick((plan.job.readings ?? []).map((_, i) => i));
    return at === undefined || rng.below(2) ? { line } : { at, line };
  },
});
