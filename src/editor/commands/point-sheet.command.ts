import * as v from 'valibot';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { partsOf } from '../../catalogue/thing-parts.ts';
import { id } from '../../plan/records/parts.ts';
import { thing } from '../../plan/records/statements.ts';
import { called } from './change-of.ts';
import { defineCommand, refuse } from './define-command.ts';

/**
 * Gives a point the figures, case and tails of a thing, which the plan carries from then on. What the sheet does not tell
 * stays as it is. A tail that a pipe meets cannot be lost by it.
 */
export default defineCommand({
  id: 'point.sheet',
  label: (args, before) => `${called(before, args.point, 'point').toLowerCase()} from its sheet`,
  args: v.object({ point: id<'point'>(), thing }),
  run(draft, args) {
    const record = draft.points[args.point] ?? refuse('That point is no longer there.');
    const { thing } = args;
    if (!pointKinds.has(thing.kind)) refuse(`There is no kind of point called ${thing.kind}.`);
    if (thing.kind !== record.kind) {
      const [is, wanted] = [record.kind, thing.kind].map((k) => (pointKinds.get(k)?.label ?? k).toLowerCase());
      refuse(`The sheet is of a ${wanted}, and this is a ${is}.`);
    }
    const parts = partsOf(thing);
    for (const { place } of Object.values(draft.nodes)) {
      if (place.on !== 'connection' || place.point !== record.id) continue;
      if (parts.connections.some((c) => c.id === place.connection)) continue;
      const lost = record.connections.find((c) => c.id === place.connection);
      refuse(
        `A pipe meets the ${(lost?.label ?? place.connection).toLowerCase()} tail, which ${thing.name} does not have. Part it first.`,
      );
    }
    draft.things[thing.id] = thing;
    record.thing = thing.id;
    record.size = parts.size;
    record.connections = parts.connections;
    record.sureness = parts.sureness;
    Object.assign(record.fields, parts.fields);
    return [];
  },
  example(plan, rng) {
    const point = rng.pick(Object.values(plan.points));
    const size = { widthMm: 400, depthMm: 300.06, heightMm: 700 };
    const made = { id: 'thing-sheet', kind: point?.kind ?? 'boiler', name: 'the sheet', fields: { inputKw: 9 }, size };
    return point ? { point: point.id, thing: made } : null;
  },
});
