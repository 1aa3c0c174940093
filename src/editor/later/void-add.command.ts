import * as v from 'valibot';
import { voidRecord } from '../../plan/records/building.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { mustStand } from '../commands/height-stands.ts';

const { storey, name, kind, outline, holes, bottom, top, joists, bearings, ventilated, mayBeCut, sureness } =
  voidRecord.entries;
const { sealed, ventAreaCm2, layers, pourDate } = voidRecord.entries;

/** A space in a floor, a ceiling, a box or a slab. */
export default defineCommand({
  id: 'void.add',
  label: (args) => `draw ${args.kind} void`,
  args: v.object({
    storey,
    kind,
    outline,
    name: v.optional(name, ''),
    holes: v.optional(holes, []),
    bottom: v.optional(bottom, null),
    top: v.optional(top, null),
    joists: v.optional(joists, null),
    bearings: v.optional(bearings, []),
    ventilated: v.optional(ventilated, null),
    mayBeCut: v.optional(mayBeCut, null),
    sureness: v.optional(sureness, 'assumed'),
    sealed,
    ventAreaCm2,
    layers,
    pourDate,
    /** The building is surveyed as it stands; only what is to be built belongs to the option. */
    made: v.optional(v.picklist(['there', 'new']), 'there'),
  }),
  run(draft, args, ctx) {
    if (!draft.storeys[args.storey]) refuse('That floor is no longer there.');
    const id = ctx.ids.next('v');
    const { made, ...told } = args;
    draft.voids[id] = { id, ...told, option: made === 'new' ? ctx.option : null };
    mustStand(draft, args.bottom, args.top, args.joists?.bottom);
    return [id];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const [x, y] = [rng.below(9000) / 7, rng.below(9000) / 7];
    const outline = [
      { x, y },
      { x: x + 1000, y },
      { x: x + 1000, y: y + 800.05 },
    ];
    const bottom = { from: 'ceiling', of: storey, mm: 12.54 };
    const top = { from: 'ceiling', of: storey, mm: 250 };
    const joists = {
      kind: 'solid',
      wayDeg: 90,
      centresMm: 400,
      first: { x: x + 73.54, y },
      depthMm: 195,
      breadthMm: 47,
      bottom: { from: 'ceiling', of: storey, mm: 15 },
      spanMm: null,
      exceptions: [],
      assumed: ['first', 'breadthMm'],
    };
    const holes = [[outline[0], { x: x + 300, y }, { x: x + 300, y: y + 200 }]];
    const told = { storey, kind: rng.pick(['floor', 'ceiling', 'boxing']), outline, bottom, top };
    return rng.below(2) === 0 ? told : { ...told, joists, holes };
  },
});
