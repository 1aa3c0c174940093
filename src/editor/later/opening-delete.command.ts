import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

export default defineCommand({
  id: 'opening.delete',
  label: (args, before) => `delete ${before.openings[args.opening]?.kind ?? 'opening'}`,
  args: v.object({ opening: id<'opening'>() }),
  run(draft, args, ctx) {
    if (!draft.openings[args.opening]) refuse('That opening is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'openings', id: args.opening }]);
    return [];
  },
  example(plan, rng) {
    const opening = rng.pick(Object.keys(plan.openings));
    return opening === undefined ? null : { opening };
  },
});
