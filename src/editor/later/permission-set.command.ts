import * as v from 'valibot';
import { permission } from '../../plan/records/basis.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { writeLine } from '../commands/job-lines.ts';

const at = v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)));

/** Somebody's leave for the work: of what, from whom, when it was asked for and given. Without `at` a new line. */
export default defineCommand({
  id: 'permission.set',
  label: (args) => `permission: ${args.line.what}`,
  args: v.object({ at, line: permission }),
  run(draft, { at, line }) {
    if (line.what.trim() === '') refuse('Say what leave is asked for.');
    if (line.asked !== null && line.given !== null && line.given < line.asked) {
      refuse('It was given before it was asked for: look at the two dates.');
    }
    writeLine(draft, 'permissions', at, line);
    return [];
  },
  example(plan, rng) {
    const line = {
      what: 'flue through the rear wall',
      from: 'the freeholder',
      asked: rng.pick(['2026-05-01', null]) ?? null,
      given: rng.pick(['2026-05-09', '2026-04-09', null]) ?? null,
      note: '',
    };
    const at = rng.pick((plan.job.permissions ?? []).map((_, i) => i));
    return at === undefined || rng.below(2) ? { line } : { at, line };
  },
});
