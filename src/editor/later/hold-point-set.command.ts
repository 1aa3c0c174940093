import * as v from 'valibot';
import { holdPoint } from '../../plan/records/basis.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { writeLine } from '../commands/job-lines.ts';

const at = v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)));

/** What must be decided or done before a day that cannot be taken back: the pour, the plaster. Without `at` a new line. */
export default defineCommand({
  id: 'holdPoint.set',
  label: (args) => `hold point: ${args.line.what}`,
  args: v.object({ at, line: holdPoint }),
  run(draft, { at, line }) {
    if (line.what.trim() === '') refuse('Say what must be decided or done.');
    writeLine(draft, 'holdPoints', at, line);
    return [];
  },
  example(plan, rng) {
    const on = rng.pick(['2026-06-01', null]) ?? null;
    const line = { what: 'condensate branch', before: 'the pour', on, owner: 'builder', done: rng.below(2) === 0 };
    const at = rng.pick((plan.job.holdPoints ?? []).map((_, i) => i));
    return at === undefined || rng.below(2) ? { line } : { at, line };
  },
});
