import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Takes a thing out of the plan. Points that used it keep all they have, and are of no thing any more. */
export default defineCommand({
  id: 'thing.delete',
  label: (args, before) => `take ${before.things[args.thing]?.name ?? 'thing'} out of the job`,
  args: v.object({ thing: id<'thing'>() }),
  run(draft, args, ctx) {
    if (!draft.things[args.thing]) refuse('That thing is no longer in the plan.');
    removeAll(ctx.before, draft, [{ map: 'things', id: args.thing }]);
    return [];
  },
  example(plan, rng) {
    const thing = rng.pick(Object.keys(plan.things));
    return thing === undefined ? null : { thing };
  },
});
