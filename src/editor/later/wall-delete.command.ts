import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Deletes a wall with its openings. What hung on it stays where it is, on nothing. */
export default defineCommand({
  id: 'wall.delete',
  label: () => 'delete wall',
  args: v.object({ wall: id<'wall'>() }),
  run(draft, args, ctx) {
    if (!draft.walls[args.wall]) refuse('That wall is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'walls', id: args.wall }]);
    return [];
  },
  example(plan, rng) {
    const wall = rng.pick(Object.keys(plan.walls));
    return wall === undefined ? null : { wall };
  },
});
