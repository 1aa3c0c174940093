import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { defineCommand } from './define-command.ts';
import { someMove } from './example-moves.ts';
import { moveThings } from './move-things.ts';

/** Takes a corner or open end somewhere else; its run stays joined. Told `to` a place, or `by` how far. */
export default defineCommand({
  id: 'node.move',
  label: () => 'move corner',
  args: v.union([v.object({ node: id<'node'>(), to: xyz }), v.object({ node: id<'node'>(), by: xyz })]),
  run: (draft, args, ctx) => moveThings(draft, [args], ctx),
  example(plan, rng) {
    const node = rng.pick(Object.values(plan.nodes).filter((n) => n.place.on === 'storey'));
    return node ? { node: node.id, by: someMove(rng) } : null;
  },
});
