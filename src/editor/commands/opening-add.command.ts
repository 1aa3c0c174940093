import * as v from 'valibot';
import { opening } from '../../plan/records/building.ts';
import { defineCommand } from './define-command.ts';
import { mustFit } from './opening-fits.ts';

const { wall, kind, name, from, alongMm, widthMm, sillMm, headMm, opens, hinge, swings, sureness } = opening.entries;

export default defineCommand({
  id: 'opening.add',
  label: (args) => `put in ${args.kind}`,
  args: v.object({
    wall,
    kind,
    name: v.optional(name, ''),
    from,
    alongMm,
    widthMm,
    sillMm,
    headMm,
    opens: v.optional(opens, null),
    hinge: v.optional(hinge, null),
    swings: v.optional(swings, null),
    sureness: v.optional(sureness, 'seen'),
    /** The building is surveyed as it stands; only what is to be built belongs to the option. */
    made: v.optional(v.picklist(['there', 'new']), 'there'),
  }),
  run(draft, args, ctx) {
    const id = ctx.ids.next('o');
    const { made, ...told } = args;
    const opening = { id, ...told, option: made === 'new' ? ctx.option : null };
    mustFit(draft, opening);
    draft.openings[id] = opening;
    return [id];
  },
  example(plan, rng) {
    const wall = rng.pick(Object.keys(plan.walls));
    if (wall === undefined) return null;
    const size = { alongMm: rng.below(1200), widthMm: 200 + rng.below(700), sillMm: 0, headMm: 2000 };
    return { wall, kind: rng.pick(['door', 'window', 'vent', 'archway']), from: rng.pick(['a', 'b']), ...size };
  },
});
