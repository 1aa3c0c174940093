import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Takes a hole out of a void again, by its place in the list. */
export default defineCommand({
  id: 'void.closeHole',
  label: (args, before) => `close a hole in ${called(before, args.void, 'void')}`,
  args: v.object({ void: id<'void'>(), index: v.pipe(v.number(), v.integer()) }),
  run(draft, { void: of, index }) {
    const space = draft.voids[of] ?? refuse('That void is no longer there.');
    if (!space.holes[index]) refuse('That hole is no longer there.');
    space.holes.splice(index, 1);
    return [];
  },
  example(plan, rng) {
    const space = rng.pick(Object.values(plan.voids));
    return space ? { void: space.id, index: rng.below(2) } : null;
  },
});
