import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { leg } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { legsReached, reach } from '../commands/reach.ts';

/** Lagging of a leg, of the run from that leg on, or of the whole run; null takes it off. */
export default defineCommand({
  id: 'leg.insulate',
  label: (args) => (args.insulation ? `lag ${args.insulation.thicknessMm}` : 'take off lagging'),
  args: v.object({ leg: id<'leg'>(), insulation: leg.entries.insulation, reach: v.optional(reach, 'leg') }),
  run(draft, args, ctx) {
    if (!draft.legs[args.leg]) refuse('That leg is no longer there.');
    for (const id of legsReached(ctx.before, ctx.chosen, args.leg, args.reach)) {
      const record = draft.legs[id];
      if (record) record.insulation = args.insulation && { ...args.insulation };
    }
    return [];
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    if (leg === undefined) return null;
    const insulation = rng.pick([null, { kind: 'foam', thicknessMm: 13 }, { kind: 'foam', thicknessMm: 25.04 }]);
    return { leg, insulation, reach: rng.pick(['leg', 'onward', 'run']) };
  },
});
