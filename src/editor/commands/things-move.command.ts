import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { defineCommand } from './define-command.ts';
import { someMove } from './example-moves.ts';
import { moveThings } from './move-things.ts';
import { movesOf } from './moves-of.ts';

/** Moves everything that is chosen by the same way, in one step. */
export default defineCommand({
  id: 'things.move',
  label: (args) => (args.things.length === 1 ? 'move' : `move ${args.things.length} things`),
  args: v.object({
    things: v.pipe(
      v.array(v.object({ map: v.picklist(['walls', 'points', 'runs', 'legs', 'nodes', 'items']), id: id() })),
      v.minLength(1, 'choose what to move'),
    ),
    by: xyz,
  }),
  run: (draft, args, ctx) => moveThings(draft, movesOf(ctx.before, args.things, args.by), ctx),
  example(plan, rng) {
    const all = (['walls', 'points', 'runs', 'legs', 'nodes'] as const).flatMap((map) =>
      Object.keys(plan[map]).map((id) => ({ map, id })),
    );
    const thing = rng.pick(all);
    return thing ? { things: [thing], by: someMove(rng) } : null;
  },
});
