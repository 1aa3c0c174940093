import * as v from 'valibot';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import { id } from '../../plan/records/parts.ts';
import { tube } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { legsReached, reach } from '../commands/reach.ts';

/** Tube of a leg, of the run from that leg on, or of the whole run. */
export default defineCommand({
  id: 'leg.size',
  label: (args) => (args.tube.size === null ? 'size not known' : `size ${sayTubeSize(args.tube)}`),
  args: v.object({ leg: id<'leg'>(), tube, reach: v.optional(reach, 'leg') }),
  run(draft, args, ctx) {
    if (!draft.legs[args.leg]) refuse('That leg is no longer there.');
    for (const leg of legsReached(ctx.before, ctx.chosen, args.leg, args.reach)) {
      const record = draft.legs[leg];
      if (record) record.tube = { ...args.tube };
    }
    return [];
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    if (leg === undefined) return null;
    const size = rng.pick(['15x0.7', '22x0.9', '28x0.9', null]) ?? null;
    return { leg, tube: { kind: 'copper', size }, reach: rng.pick(['leg', 'onward', 'run']) };
  },
});
