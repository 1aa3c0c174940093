import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Takes the name off a space; the walls stay. Heights told from its floor or ceiling keep the z they have. */
export default defineCommand({
  id: 'room.delete',
  label: (args, before) => `delete ${called(before, args.room, 'room')}`,
  args: v.object({ room: id<'room'>() }),
  run(draft, args, ctx) {
    if (!draft.rooms[args.room]) refuse('That room is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'rooms', id: args.room }]);
    return [];
  },
  example(plan, rng) {
    const room = rng.pick(Object.keys(plan.rooms));
    return room === undefined ? null : { room };
  },
});
