import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';

/** Deletes a run with its legs, and the nodes and items that nothing else holds. */
export default defineCommand({
  id: 'run.delete',
  label: (args, before) => `delete ${serviceWord(before.runs[args.run]?.service)} run`,
  args: v.object({ run: id<'run'>() }),
  run(draft, args, ctx) {
    if (!draft.runs[args.run]) refuse('That run is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'runs', id: args.run }]);
    return [];
  },
  example(plan, rng) {
    const run = rng.pick(Object.keys(plan.runs));
    return run === undefined ? null : { run };
  },
});
