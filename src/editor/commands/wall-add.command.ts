import * as v from 'valibot';
import { distance } from '../../geometry/vec.ts';
import { wall } from '../../plan/records/building.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from './define-command.ts';

const { storey, a, b, thicknessMm, construction, heightMm, sureness } = wall.entries;

export default defineCommand({
  id: 'wall.add',
  label: () => 'draw wall',
  args: v.object({
    storey,
    a,
    b,
    thicknessMm,
    construction,
    heightMm: v.optional(heightMm, null),
    sureness: v.optional(sureness, 'seen'),
    /** The building is surveyed as it stands; only what is to be built belongs to the option. */
    made: v.optional(v.picklist(['there', 'new']), 'there'),
  }),
  run(draft, args, ctx) {
    if (!draft.storeys[args.storey]) refuse('That floor is no longer there.');
    if (distance(args.a, args.b) < COINCIDENT_MM) refuse('A wall needs two places.');
    if (args.thicknessMm <= 0) refuse('A wall needs a thickness.');
    const id = ctx.ids.next('w');
    const { made, ...told } = args;
    draft.walls[id] = { id, ...told, option: made === 'new' ? ctx.option : null };
    return [id];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    const place = () => ({ x: rng.below(9000) / 7, y: rng.below(9000) / 7 });
    return storey === undefined ? null : { storey, a: place(), b: place(), thicknessMm: 100, construction: 'block' };
  },
});
