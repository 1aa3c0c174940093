import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { option } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { copyOption } from './copy-option.ts';
import { nextOptionName } from './option-things.ts';

/**
 * A further option that starts as another one is, or, from `null`, with everything surveyed kept. Without a name it gets
 * the next free letter. Gives the id of the option made.
 */
export default defineCommand({
  id: 'option.copy',
  label: (args, before) =>
    args.option === null ? 'add option' : `copy option ${before.options[args.option]?.name ?? ''}`,
  args: v.object({ option: v.nullable(id<'option'>()), name: v.optional(option.entries.name) }),
  run(draft, args, ctx) {
    const from =
      args.option === null ? null : (ctx.before.options[args.option] ?? refuse('That option is no longer there.'));
    const made = ctx.ids.next('option');
    const name = args.name?.trim() || nextOptionName(ctx.before);
    draft.options[made] = from ? { ...structuredClone(from), id: made, name } : { id: made, name, note: '', fates: {} };
    if (from) copyOption(draft, from.id, made, ctx);
    return [made];
  },
  example(plan, rng) {
    const from = rng.pick([...Object.keys(plan.options), null]);
    return from === undefined ? null : { option: from, ...(rng.below(2) === 0 ? {} : { name: 'lower way' }) };
  },
});
