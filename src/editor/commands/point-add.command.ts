import * as v from 'valibot';
import { makePoint } from '../../catalogue/make-point.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { partsOf } from '../../catalogue/thing-parts.ts';
import { free, heightRef, hosted } from '../../plan/records/parts.ts';
import { field, point } from '../../plan/records/pipework.ts';
import { thing as thingRecord } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from './define-command.ts';

const { storey, name, thing, sureness, size } = point.entries;
const height = v.optional(heightRef);

/**
 * Places a boiler, meter, tap… free on the floor or on a wall's side. Without a height it takes the one of its kind. With
 * `carried` it is one of the user's own things: it has that one's size, tails and figures, and the plan carries it.
 */
export default defineCommand({
  id: 'point.add',
  label: (args) => `place ${(pointKinds.get(args.kind)?.label ?? args.kind).toLowerCase()}`,
  args: v.object({
    kind: point.entries.kind,
    storey,
    place: v.variant('on', [v.object({ ...free.entries, height }), v.object({ ...hosted.entries, height })]),
    name: v.optional(name),
    size: v.optional(v.partial(v.object(size.entries))),
    fields: v.optional(v.record(v.string(), field)),
    thing: v.optional(thing),
    sureness: v.optional(sureness),
    carried: v.optional(thingRecord),
  }),
  run(draft, args, ctx) {
    const { kind, storey, place, carried, ...rest } = args;
    const known = pointKinds.get(kind) ?? refuse(`There is no kind of point called ${kind}.`);
    if (!draft.storeys[storey]) refuse('That floor is no longer there.');
    if (place.on === 'wall' && !draft.walls[place.wall]) refuse('That wall is no longer there.');
    const told = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
    const { height, ...where } = place;
    const id = ctx.ids.next('p');
    // Meter and stop tap belong to the house as it was found: no option of the work makes them.
    const option = known.group === 'source' ? null : ctx.option;
    const at = { place: height ? { ...where, height } : where };
    if (!carried) {
      draft.points[id] = makePoint(kind, { id, storey, option, ...told, ...at });
      return [id];
    }
    if (carried.kind !== kind) refuse(`${carried.name} is of another kind.`);
    const { connections, ...parts } = partsOf(carried);
    const made = makePoint(kind, {
      id,
      storey,
      option,
      name: carried.name,
      thing: carried.id,
      ...parts,
      ...told,
      ...at,
    });
    draft.points[id] = { ...made, connections };
    draft.things[carried.id] = carried;
    return [id];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const kind = rng.pick(['boiler', 'gas-meter', 'hob', 'radiator']);
    const wall = rng.pick(Object.keys(plan.walls));
    const along = rng.below(3000) / 7;
    const place =
      wall !== undefined && rng.below(2) === 0
        ? {
            on: 'wall',
            wall,
            side: rng.pick(['left', 'right']),
            from: rng.pick(['a', 'b']),
            alongMm: along,
            standOffMm: 0,
          }
        : { on: 'storey', x: along, y: along * 3, angleDeg: rng.below(360) };
    return { kind, storey, place };
  },
});
