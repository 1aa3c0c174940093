import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { defineCommand } from './define-command.ts';
import { someMove } from './example-moves.ts';
import { moveThings } from './move-things.ts';

/** Shifts a leg; the legs beside it grow or shrink, and tails stay where they are. */
export default defineCommand({
  id: 'leg.move',
  label: () => 'move leg',
  args: v.object({ leg: id<'leg'>(), by: xyz }),
  run: (draft, args, ctx) => moveThings(draft, [args], ctx),
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    return leg === undefined ? null : { leg, by: someMove(rng) };
  },
});
