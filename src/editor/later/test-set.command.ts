import * as v from 'valibot';
import { testRecord } from '../../plan/records/basis.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { writeLine } from '../commands/job-lines.ts';

const at = v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)));

/** A figure that may lie below nothing: what came of a reading. A time, a pressure or a volume may not. */
const MAY_BE_BELOW = /rise|drop|C$/i;

/** A test or commissioning record, as it was found. Without `at` a new one. */
export default defineCommand({
  id: 'test.set',
  label: (args) => `record: ${args.line.kind}`,
  args: v.object({ at, line: testRecord }),
  run(draft, { at, line }) {
    if (line.kind.trim() === '') refuse('Say what was tested.');
    for (const [key, value] of Object.entries(line.figures))
      if (value !== null && value < 0 && !MAY_BE_BELOW.test(key))
        refuse(`A figure here is not less than nothing: ${value}.`);
    writeLine(draft, 'tests', at, line);
    return [];
  },
  example(plan, rng) {
    const dropMbar = rng.pick([null, 0, 2.5]) ?? null;
    const testMbar = rng.pick([20.5, -1]) ?? null;
    const line = {
      kind: rng.pick(['tightness', '']) ?? 'tightness',
      part: 'new pipework on its own',
      edition: '3',
      on: rng.pick(['2026-09-30', null]) ?? null,
      figures: { testMbar, dropMbar },
      result: 'no fall',
      by: '',
      note: '',
    };
    const at = rng.pick((plan.job.tests ?? []).map((_, i) => i));
    return at === undefined || rng.below(2) ? { line } : { at, line };
  },
});
