import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Deletes a void. Pipes whose heights were told from it stay at the z they have. */
export default defineCommand({
  id: 'void.delete',
  label: (args, before) => `delete ${called(before, args.void, 'void')}`,
  args: v.object({ void: id<'void'>() }),
  run(draft, args, ctx) {
    if (!draft.voids[args.void]) refuse('That void is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'voids', id: args.void }]);
    return [];
  },
  example(plan, rng) {
    const id = rng.pick(Object.keys(plan.voids));
    return id === undefined ? null : { void: id };
  },
});
