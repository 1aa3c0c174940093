import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Deletes a bank with all of its runs, from end to end. To let the runs go their own ways there is group.delete. */
export default defineCommand({
  id: 'bank.delete',
  label: (args, before) => `delete bank of ${before.groups[args.group]?.members.length ?? 0}`,
  args: v.object({ group: id<'group'>() }),
  run(draft, args, ctx) {
    const record = draft.groups[args.group] ?? refuse('That bank is no longer there.');
    const runs = [...record.members];
    if (ctx.option !== null && runs.some((run) => draft.runs[run]?.option === null)) {
      refuse('Pipe that was there before is in that bank: mark it to strip out instead.');
    }
    removeAll(
      ctx.before,
      draft,
      runs.map((id) => ({ map: 'runs', id })),
    );
    delete draft.groups[args.group];
    return [];
  },
  example(plan, rng) {
    const group = rng.pick(Object.keys(plan.groups));
    return group === undefined ? null : { group };
  },
});
