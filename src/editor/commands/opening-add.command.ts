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
  }),
  run(draft, args, ctx) {
    const id = ctx.ids.next('o');
    const made = { id, ...args, option: ctx.option };
    mustFit(draft, made);
    draft.openings[id] = made;
    return [id];
  },
  example(plan, rng) {
    const wall = rng.pick(Object.keys(plan.walls));
    if (wall === undefined) return null;
    const size = { alongMm: rng.below(1200), widthMm: 200 + rng.below(700), sillMm: 0, headMm: 2000 };
    return { wall, kind: rng.pick(['door', 'window', 'vent', 'archway']), from: rng.pick(['a', 'b']), ...size };
  },
});
