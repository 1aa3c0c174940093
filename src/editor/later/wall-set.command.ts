import * as v from 'valibot';
import { wall } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { thicknessMm, construction, heightMm, party, fire, leafMm, hollow, sureness } = wall.entries;

/** What a wall is made of. Where it stands is `wall.move`. */
export default defineCommand({
  id: 'wall.set',
  label: () => 'change wall',
  args: v.object({
    wall: id<'wall'>(),
    change: v.partial(
      v.object({
        thicknessMm,
        construction,
        heightMm,
        party: party.wrapped,
        fire: fire.wrapped,
        leafMm: leafMm.wrapped,
        hollow: hollow.wrapped,
        sureness,
      }),
    ),
  }),
  run(draft, args) {
    if (args.change.thicknessMm !== undefined && args.change.thicknessMm <= 0) refuse('A wall needs a thickness.');
    change(draft.walls[args.wall] ?? refuse('That wall is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const wall = rng.pick(Object.keys(plan.walls));
    const changes = [
      { thicknessMm: 215.06 },
      { construction: 'stud' },
      { heightMm: 2100 },
      { heightMm: null },
      { party: true },
      { leafMm: 100.04 },
    ];
    return wall === undefined ? null : { wall, change: rng.pick(changes) };
  },
});
