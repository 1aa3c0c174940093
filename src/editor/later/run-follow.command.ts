import * as v from 'valibot';
import { resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import { followed } from '../../network/steps/follow.ts';
import { heightRef, id, mm, positiveMm } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { addPath } from '../commands/add-path.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { legsAt } from '../commands/legs-at.ts';
import { heightOf, type PlaceArg } from '../commands/place-arg.ts';
import { serviceWord } from '../commands/service-word.ts';

/**
 * Carries a run on from one of its nodes along a wall, a joist bay or another run, to abreast of a place. Without a height it
 * stays at that of the node; with one it goes up or down to it first.
 */
export default defineCommand({
  id: 'run.follow',
  label: (args, before) => `take ${serviceWord(before.runs[args.run]?.service)} run along`,
  args: v.object({
    run: id<'run'>(),
    from: id<'node'>(),
    what: v.picklist(['wall', 'bay', 'run']),
    /** Off the face of the wall, or middle to middle. */
    mm: v.optional(positiveMm, 0),
    to: v.object({ storey: id<'storey'>(), x: mm, y: mm }),
    height: v.optional(heightRef),
    /** The run to go along; left out: the nearest. */
    beside: v.optional(id<'run'>()),
  }),
  run(draft, args, ctx) {
    const { before } = ctx;
    const run = draft.runs[args.run] ?? refuse('That run is no longer there.');
    const node = before.nodes[args.from];
    const leg = legsAt(before, args.from).find((l) => l.run === args.run);
    const at = node && nodePlace(before, node)?.at;
    if (!node || !leg || !at) return refuse('That end of the run is no longer there.');
    if (!before.storeys[args.to.storey]) return refuse('That floor is no longer there.');
    const height = args.height ?? heightOf(node);
    const z = resolveHeight(before, height)?.z;
    if (z === undefined) return refuse('That height is told from something that has none itself.');
    const from = { ...at, z };
    const { storey } = args.to;
    const ask = { storey, from, to: args.to, own: args.run };
    const found = followed(before, { what: args.what, mm: args.mm }, ask, args.beside ?? null);
    if (!found.ok) return refuse(found.why);
    const corners = [from, ...found.pts].filter((p, i, all) => distance3(p, all[i - 1] ?? at) > COINCIDENT_MM);
    const path = corners.map(({ x, y }): PlaceArg => ({ at: 'free', storey, x, y, height: { ...height } }) as PlaceArg);
    return addPath(draft, run, args.from, path, leg, ctx);
  },
  example(plan, rng) {
    const leg = rng.pick(Object.values(plan.legs));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!leg || storey === undefined) return null;
    const to = { storey, x: rng.below(40_000) / 7, y: rng.below(40_000) / 7 };
    return {
      run: leg.run,
      from: leg.b,
      what: rng.pick(['wall', 'run', 'run', 'bay']),
      mm: 25 + rng.below(700) / 7,
      to,
    };
  },
});
