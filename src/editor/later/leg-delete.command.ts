import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { partRuns } from '../commands/part-runs.ts';

/** Deletes a leg. A run cut in the middle becomes two. */
export default defineCommand({
  id: 'leg.delete',
  label: () => 'delete leg',
  args: v.object({ leg: id<'leg'>() }),
  run(draft, args, ctx) {
    const leg = draft.legs[args.leg] ?? refuse('That leg is no longer there.');
    const runs = new Set([leg.run]);
    removeAll(ctx.before, draft, [{ map: 'legs', id: args.leg }]);
    return partRuns(ctx.before, draft, runs, ctx);
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    return leg === undefined ? null : { leg };
  },
});
