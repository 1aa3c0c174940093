import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Deletes a point. Pipes that met it stay, with an open end at the same place. */
export default defineCommand({
  id: 'point.delete',
  label: (args, before) => `delete ${called(before, args.point, 'point').toLowerCase()}`,
  args: v.object({ point: id<'point'>() }),
  run(draft, args, ctx) {
    if (!draft.points[args.point]) refuse('That point is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'points', id: args.point }]);
    return [];
  },
  example(plan, rng) {
    const point = rng.pick(Object.keys(plan.points));
    return point === undefined ? null : { point };
  },
});
