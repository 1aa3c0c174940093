import * as v from 'valibot';
import { option } from '../../plan/records/statements.ts';
import { defineCommand } from '../commands/define-command.ts';

/** A further way to do the job. It starts with every surveyed thing kept. */
export default defineCommand({
  id: 'option.add',
  label: (args) => `add option ${args.name}`,
  args: v.object({ name: option.entries.name, note: v.optional(option.entries.note, '') }),
  run(draft, args, ctx) {
    const id = ctx.ids.next('option');
    draft.options[id] = { id, ...args, fates: {} };
    return [id];
  },
  example: () => ({ name: 'B' }),
});
