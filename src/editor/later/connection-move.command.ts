import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand } from '../commands/define-command.ts';
import { someMove } from '../commands/example-moves.ts';
import { moveThings } from '../commands/move-things.ts';

/** Puts a tail right on its point, so far in the house; the pipe that meets it follows. */
export default defineCommand({
  id: 'connection.move',
  label: (args, before) => `move tail of ${called(before, args.point, 'point').toLowerCase()}`,
  args: v.object({ point: id<'point'>(), connection: id<'connection'>(), by: xyz }),
  run: (draft, args, ctx) => moveThings(draft, [args], ctx),
  example(plan, rng) {
    const p = rng.pick(Object.values(plan.points).filter((q) => q.connections.length > 0));
    const c = p && rng.pick(p.connections);
    return p && c ? { point: p.id, connection: c.id, by: someMove(rng) } : null;
  },
});
