import * as v from 'valibot';
import { id, xy } from '../../plan/records/parts.ts';
import { defineCommand } from './define-command.ts';
import { moveThings } from './move-things.ts';

/** Moves a wall whole or by one end. Walls that join it follow, and so do the pipes of what hangs on them. */
export default defineCommand({
  id: 'wall.move',
  label: () => 'move wall',
  args: v.union([
    v.object({ wall: id<'wall'>(), by: xy }),
    v.object({ wall: id<'wall'>(), end: v.picklist(['a', 'b']), to: xy }),
  ]),
  run: (draft, args, ctx) => moveThings(draft, [args], ctx),
  example(plan, rng) {
    const wall = rng.pick(Object.values(plan.walls));
    if (!wall) return null;
    const by = { x: rng.below(500) / 7, y: -rng.below(500) / 7 };
    if (rng.below(2) === 0) return { wall: wall.id, by };
    return { wall: wall.id, end: 'b', to: { x: wall.b.x + by.x, y: wall.b.y + by.y } };
  },
});
