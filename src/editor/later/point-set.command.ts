import * as v from 'valibot';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { id } from '../../plan/records/parts.ts';
import { field, point } from '../../plan/records/pipework.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { name, size, thing, sureness, connections } = point.entries;

/**
 * Name, size, fields or connections of a point. Fields that are told are merged with those that are there. A connection
 * that a pipe meets cannot be taken away. With `remake` the kind gives the connections again for the new size and fields.
 */
export default defineCommand({
  id: 'point.set',
  label: (args, before) => `change ${called(before, args.point, 'point').toLowerCase()}`,
  args: v.object({
    point: id<'point'>(),
    change: v.partial(v.object({ name, size, thing, sureness, connections })),
    fields: v.optional(v.record(v.string(), field)),
    remake: v.optional(v.boolean(), false),
  }),
  run(draft, args) {
    const record = draft.points[args.point] ?? refuse('That point is no longer there.');
    if (args.change.thing != null && !draft.things[args.change.thing]) refuse('That thing is no longer in the plan.');
    change(record, args.change);
    Object.assign(record.fields, args.fields ?? {});
    const kind = pointKinds.get(record.kind);
    if (args.remake && kind) record.connections = kind.connections({ ...record.size }, { ...record.fields });
    for (const { place } of Object.values(draft.nodes)) {
      if (place.on !== 'connection' || place.point !== record.id) continue;
      if (!record.connections.some((c) => c.id === place.connection)) {
        refuse(`A pipe meets the ${place.connection} connection. Part it first, then take the connection away.`);
      }
    }
    return [];
  },
  example(plan, rng) {
    const point = rng.pick(Object.values(plan.points));
    if (!point) return null;
    const more = [{}, { fields: { note: 'seen' } }, { remake: true }][rng.below(3)];
    const changes = [{ name: 'old one' }, { sureness: 'assumed' }, { connections: point.connections.slice(1) }];
    return { point: point.id, change: rng.pick(changes), ...more };
  },
});
