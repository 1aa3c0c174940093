import * as v from 'valibot';
import { defineCommand } from '../commands/define-command.ts';
import { dropLine, JOB_LISTS } from '../commands/job-lines.ts';

const WORD = {
  permissions: 'permission',
  readings: 'reading',
  holdPoints: 'hold point',
  tests: 'test record',
  unsafe: 'unsafe situation',
} as const;

/** Takes a line of the job card away: a permission, a reading, a hold point, a record. */
export default defineCommand({
  id: 'jobLine.delete',
  label: (args) => `delete ${WORD[args.list]}`,
  args: v.object({ list: v.picklist(JOB_LISTS), at: v.pipe(v.number(), v.integer(), v.minValue(0)) }),
  run(draft, { list, at }) {
    dropLine(draft, list, at);
    return [];
  },
  example(plan, rng) {
    const lines = JOB_LISTS.flatMap((list) => (plan.job[list] ?? []).map((_, at) => ({ list, at })));
    return rng.pick(lines) ?? null;
  },
});
