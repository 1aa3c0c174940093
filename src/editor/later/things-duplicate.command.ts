import * as v from 'valibot';
import { xy } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { duplicate } from '../commands/duplicate.ts';

const MAPS = ['walls', 'points', 'runs', 'voids'] as const;

/** Copies walls with their openings, points, voids and runs, so far to the side. Copies are new things of what is in hand. */
export default defineCommand({
  id: 'things.duplicate',
  label: (args) => (args.things.length === 1 ? 'copy' : `copy ${args.things.length} things`),
  args: v.object({
    things: v.pipe(
      v.array(v.object({ map: v.picklist(MAPS), id: v.string() })),
      v.minLength(1, 'choose walls, points, voids or runs to copy'),
    ),
    by: xy,
  }),
  run(draft, args, ctx) {
    for (const { map, id } of args.things) if (!draft[map][id]) refuse('Some of it is no longer there.');
    return duplicate(draft, args.things, args.by, ctx);
  },
  example(plan, rng) {
    const all = MAPS.flatMap((map) => Object.keys(plan[map]).map((id) => ({ map, id })));
    const thing = rng.pick(all);
    const other = rng.pick(all);
    const things = thing && other && other.id !== thing.id ? [thing, other] : thing ? [thing] : [];
    return things.length === 0 ? null : { things, by: { x: 500.04, y: -rng.below(300) } };
  },
});
