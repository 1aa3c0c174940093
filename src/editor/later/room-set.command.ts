import * as v from 'valibot';
import { room } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { seed, name, use, heated, floorMm, ceilingMm, finishes, floorCovering, ceilingFinish, escapeRoute } =
  room.entries;

export default defineCommand({
  id: 'room.set',
  label: (args, before) => `change ${called(before, args.room, 'room')}`,
  args: v.object({
    room: id<'room'>(),
    change: v.partial(
      v.object({
        seed,
        name,
        use,
        heated,
        floorMm,
        ceilingMm,
        finishes,
        floorCovering: floorCovering.wrapped,
        ceilingFinish: ceilingFinish.wrapped,
        escapeRoute,
      }),
    ),
  }),
  run(draft, args) {
    change(draft.rooms[args.room] ?? refuse('That room is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const room = rng.pick(Object.keys(plan.rooms));
    const changes = [
      { name: 'hall' },
      { use: 'bathroom' },
      { heated: true },
      { ceilingMm: 2250 },
      { escapeRoute: true },
      { floorCovering: 'tiles' },
    ];
    return room === undefined ? null : { room, change: rng.pick(changes) };
  },
});
