import * as v from 'valibot';
import { id, mm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { nodeOnLeg } from '../commands/place-arg.ts';

/** Puts a node into a leg, so far from its first end. Gives the node. */
export default defineCommand({
  id: 'leg.split',
  label: () => 'part leg',
  args: v.object({ leg: id<'leg'>(), alongMm: mm }),
  run(draft, args, ctx) {
    const leg = draft.legs[args.leg] ?? refuse('That leg is no longer there.');
    const node = nodeOnLeg(draft, leg, args.alongMm, ctx);
    if (ctx.before.nodes[node]) refuse('There is a node at that place already.');
    return [node];
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    return leg === undefined ? null : { leg, alongMm: rng.below(3000) };
  },
});
