import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { option } from '../../plan/records/statements.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { name, note } = option.entries;

export default defineCommand({
  id: 'option.set',
  label: (args, before) => `change option ${before.options[args.option]?.name ?? ''}`,
  args: v.object({ option: id<'option'>(), change: v.partial(v.object({ name, note })) }),
  run(draft, args) {
    change(draft.options[args.option] ?? refuse('That option is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const option = rng.pick(Object.keys(plan.options));
    return option === undefined ? null : { option, change: { note: 'less to make good' } };
  },
});
