import * as v from 'valibot';
import { itemKinds, makeItem } from '../../catalogue/items.ts';
import { id } from '../../plan/records/parts.ts';
import { field, item } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from './define-command.ts';
import { legsAt } from './legs-at.ts';
import { nodeOnLeg, placeArg } from './place-arg.ts';

/** Puts a valve, filter, drain cock… at a node, or into a leg, which it splits there. */
export default defineCommand({
  id: 'item.add',
  label: (args) => `put in ${(itemKinds.get(args.kind)?.label ?? args.kind).toLowerCase()}`,
  args: v.object({
    kind: item.entries.kind,
    place: placeArg,
    along: v.optional(v.nullable(id<'leg'>()), null),
    name: v.optional(item.entries.name),
    fields: v.optional(v.record(v.string(), field)),
  }),
  run(draft, args, ctx) {
    const kind = itemKinds.get(args.kind) ?? refuse(`There is no kind of item called ${args.kind}.`);
    const { place } = args;
    if (place.at !== 'node' && place.at !== 'leg') return refuse('An item goes on a pipe.');
    const leg = place.at === 'leg' ? (draft.legs[place.leg] ?? refuse('That leg is no longer there.')) : undefined;
    const node =
      place.at === 'leg' && leg ? nodeOnLeg(draft, leg, place.alongMm, ctx) : place.at === 'node' ? place.node : '';
    if (!draft.nodes[node]) refuse('That place is no longer there.');
    const service = draft.runs[legsAt(draft, node)[0]?.run ?? '']?.service;
    if (service !== undefined && kind.services.length > 0 && !kind.services.includes(service)) {
      refuse(`${kind.label} is not used in ${service}.`);
    }
    if (args.along !== null && !draft.legs[args.along]) refuse('That leg is no longer there.');
    const item = ctx.ids.next('i');
    const told = {
      ...(args.name === undefined ? {} : { name: args.name }),
      ...(args.fields ? { fields: args.fields } : {}),
    };
    draft.items[item] = makeItem(kind.id, { id: item, node, option: ctx.option, along: args.along, ...told });
    return [item, node];
  },
  example(plan, rng) {
    const leg = rng.pick(Object.values(plan.legs));
    if (!leg) return null;
    const kind = rng.pick([...itemKinds.keys()]);
    const onNode = rng.below(2) === 0;
    return { kind, place: onNode ? { at: 'node', node: leg.b } : { at: 'leg', leg: leg.id, alongMm: rng.below(900) } };
  },
});
