import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Lets the runs of a bank go their own ways; none of them moves. */
export default defineCommand({
  id: 'group.delete',
  label: () => 'part bank',
  args: v.object({ group: id<'group'>() }),
  run(draft, args) {
    if (!draft.groups[args.group]) refuse('That bank is no longer there.');
    delete draft.groups[args.group];
    return [];
  },
  example(plan, rng) {
    const group = rng.pick(Object.keys(plan.groups));
    return group === undefined ? null : { group };
  },
});
