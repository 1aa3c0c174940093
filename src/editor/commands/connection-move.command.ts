import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { called } from './change-of.ts';
import { defineCommand } from './define-command.ts';
import { someMove } from './example-moves.ts';
import { moveThings } from './move-things.ts';

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
