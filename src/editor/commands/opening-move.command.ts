import * as v from 'valibot';
import { id, mm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from './define-command.ts';
import { mustFit } from './opening-fits.ts';

/** Slides an opening along its wall, or takes it to another. `alongMm` is told from the end it is set from. */
export default defineCommand({
  id: 'opening.move',
  label: (args, before) => `move ${before.openings[args.opening]?.kind ?? 'opening'}`,
  args: v.object({ opening: id<'opening'>(), alongMm: mm, wall: v.optional(id<'wall'>()) }),
  run(draft, args) {
    const opening = draft.openings[args.opening] ?? refuse('That opening is no longer there.');
    opening.alongMm = args.alongMm;
    if (args.wall !== undefined) opening.wall = args.wall;
    mustFit(draft, opening);
    return [];
  },
  example(plan, rng) {
    const opening = rng.pick(Object.keys(plan.openings));
    return opening === undefined ? null : { opening, alongMm: rng.below(1500) / 3 };
  },
});
