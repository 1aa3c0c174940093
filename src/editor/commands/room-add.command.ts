import * as v from 'valibot';
import { room } from '../../plan/records/building.ts';
import { defineCommand, refuse } from './define-command.ts';

const { storey, seed, name, use, heated, floorMm, ceilingMm, finishes, escapeRoute } = room.entries;

/** Names the space around a place. Its outline is derived from the walls. */
export default defineCommand({
  id: 'room.add',
  label: (args) => `name ${args.name === '' ? 'room' : args.name}`,
  args: v.object({
    storey,
    seed,
    name,
    use: v.optional(use, ''),
    heated: v.optional(heated, null),
    floorMm: v.optional(floorMm, null),
    ceilingMm: v.optional(ceilingMm, null),
    finishes: v.optional(finishes, ''),
    escapeRoute: v.optional(escapeRoute, null),
  }),
  run(draft, args, ctx) {
    if (!draft.storeys[args.storey]) refuse('That floor is no longer there.');
    const id = ctx.ids.next('room');
    draft.rooms[id] = { id, ...args };
    return [id];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    const seed = { x: rng.below(9000) / 7, y: rng.below(9000) / 7 };
    return storey === undefined ? null : { storey, seed, name: 'kitchen', floorMm: rng.pick([null, 120.04]) };
  },
});
