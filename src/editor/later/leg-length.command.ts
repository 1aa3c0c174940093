import * as v from 'valibot';
import { nodePlace } from '../../geometry/places.ts';
import { distance3, scale3, sub3 } from '../../geometry/vec.ts';
import { id, positiveMm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { moveThings } from '../commands/move-things.ts';

/**
 * A leg of a told length: its far end goes along it, and the rest of the run follows. `keep` names the end that stays;
 * left out, it is the one that cannot move, else the one that was drawn first.
 */
export default defineCommand({
  id: 'leg.length',
  label: (args) => `leg of ${Math.round(args.lengthMm)}`,
  args: v.object({ leg: id<'leg'>(), lengthMm: positiveMm, keep: v.optional(v.picklist(['a', 'b'])) }),
  run(draft, args, ctx) {
    const leg = ctx.before.legs[args.leg] ?? refuse('That leg is no longer there.');
    const [a, b] = [ctx.before.nodes[leg.a], ctx.before.nodes[leg.b]];
    const [pa, pb] = [a && nodePlace(ctx.before, a)?.at, b && nodePlace(ctx.before, b)?.at];
    if (!a || !b || !pa || !pb) return refuse('That leg has no length yet: an end of it has no height.');
    const full = distance3(pa, pb);
    if (full === 0) refuse('That leg has no way to go.');
    if (args.lengthMm === 0) refuse('A leg needs a length. To take it away, delete it.');
    const keep = args.keep ?? (b.place.on === 'connection' ? 'b' : 'a');
    const [node, way] = keep === 'a' ? [b, sub3(pb, pa)] : [a, sub3(pa, pb)];
    return moveThings(draft, [{ node: node.id, by: scale3(way, (args.lengthMm - full) / full) }], ctx);
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    return leg === undefined ? null : { leg, lengthMm: 300 + rng.below(9000) / 7 };
  },
});
