import * as v from 'valibot';
import { job } from '../../plan/records/basis.ts';
import { text } from '../../plan/records/parts.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand } from '../commands/define-command.ts';

/** Name of the job, and who, where and why. */
export default defineCommand({
  id: 'plan.rename',
  label: () => 'name job',
  args: v.object({ name: v.optional(text), job: v.optional(v.partial(v.object(job.entries)), {}) }),
  run(draft, args) {
    if (args.name !== undefined) draft.name = args.name;
    change(draft.job, args.job);
    return [];
  },
  example: (_plan, rng) => rng.pick([{ name: 'linen room' }, { job: { note: 'key under pot' } }, {}]) ?? {},
});
