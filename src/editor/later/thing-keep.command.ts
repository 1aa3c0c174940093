import * as v from 'valibot';
import { thingFrom } from '../../catalogue/thing-parts.ts';
import { id, text } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Keeps what a point knows of its appliance as a thing of the plan, which the point then is one of. */
export default defineCommand({
  id: 'thing.keep',
  label: (args) => `keep ${args.name} as a thing`,
  args: v.object({ point: id<'point'>(), name: text }),
  run(draft, args, ctx) {
    const record = draft.points[args.point] ?? refuse('That point is no longer there.');
    if (args.name.trim() === '') refuse('Give it a name, so that it can be found again.');
    const made = ctx.ids.next('thing');
    draft.things[made] = thingFrom(record, made, args.name.trim());
    record.thing = made;
    return [made];
  },
  example(plan, rng) {
    const point = rng.pick(Object.keys(plan.points));
    return point === undefined ? null : { point, name: rng.pick(['my boiler', ' ']) ?? '' };
  },
});
