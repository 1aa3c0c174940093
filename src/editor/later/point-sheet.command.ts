import * as v from 'valibot';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { partsOf } from '../../catalogue/thing-parts.ts';
import { id } from '../../plan/records/parts.ts';
import { thing } from '../../plan/records/statements.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { setTails } from '../commands/set-tails.ts';

/**
 * Gives a point the figures, case and tails of a thing, which the plan carries from then on. What the sheet does not tell
 * stays as it is. Pipes follow their tails; a tail that a pipe meets cannot be lost by it.
 */
export default defineCommand({
  id: 'point.sheet',
  label: (args, before) => `${called(before, args.point, 'point').toLowerCase()} from its sheet`,
  args: v.object({ point: id<'point'>(), thing }),
  run(draft, args, ctx) {
    const before = ctx.before.points[args.point] ?? refuse('That point is no longer there.');
    const { thing } = args;
    if (!pointKinds.has(thing.kind)) refuse(`There is no kind of point called ${thing.kind}.`);
    if (thing.kind !== before.kind) {
      const [is, wanted] = [before.kind, thing.kind].map((k) => (pointKinds.get(k)?.label ?? k).toLowerCase());
      refuse(`The sheet is of a ${wanted}, and this is a ${is}.`);
    }
    const parts = partsOf(thing);
    const lost = (label: string) => `A pipe meets the ${label} tail, which ${thing.name} does not have. Part it first.`;
    const { record, made } = setTails(draft, args.point, parts.connections, ctx, lost);
    draft.things[thing.id] = thing;
    record.thing = thing.id;
    record.size = parts.size;
    record.sureness = parts.sureness;
    record.fields = { ...record.fields, ...parts.fields };
    return made;
  },
  example(plan, rng) {
    const point = rng.pick(Object.values(plan.points));
    const size = { widthMm: 400, depthMm: 300.06, heightMm: 700 };
    const made = { id: 'thing-sheet', kind: point?.kind ?? 'boiler', name: 'the sheet', fields: { inputKw: 9 }, size };
    return point ? { point: point.id, thing: made } : null;
  },
});
