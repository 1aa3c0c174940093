import * as v from 'valibot';
import { wallLength } from '../../geometry/wall-frame.ts';
import { id, positiveMm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { moveThings } from '../commands/move-things.ts';

/** A wall of a told length along its middle line: the end that is not kept goes along it, with the corner it makes. */
export default defineCommand({
  id: 'wall.length',
  label: (args) => `wall of ${Math.round(args.lengthMm)}`,
  args: v.object({ wall: id<'wall'>(), lengthMm: positiveMm, keep: v.optional(v.picklist(['a', 'b']), 'a') }),
  run(draft, args, ctx) {
    const wall = ctx.before.walls[args.wall] ?? refuse('That wall is no longer there.');
    const was = wallLength(wall);
    if (args.lengthMm === 0 || was === 0) refuse('A wall needs a length. To take it away, delete it.');
    const [from, end, far] = args.keep === 'a' ? ([wall.a, 'b', wall.b] as const) : ([wall.b, 'a', wall.a] as const);
    const k = args.lengthMm / was;
    const to = { x: from.x + (far.x - from.x) * k, y: from.y + (far.y - from.y) * k };
    return moveThings(draft, [{ wall: wall.id, end, to }], ctx);
  },
  example(plan, rng) {
    const wall = rng.pick(Object.keys(plan.walls));
    return wall === undefined ? null : { wall, lengthMm: 900 + rng.below(9000) / 7, keep: rng.pick(['a', 'b']) };
  },
});
