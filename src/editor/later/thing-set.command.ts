import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { thing } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { kind, name, fields, size, connections } = thing.entries;

/**
 * A boiler, cylinder, hob… typed from its sheet and carried in the plan. Without `thing` a new one is made. Points that use it
 * stay as they are: a changed sheet is offered to them.
 */
export default defineCommand({
  id: 'thing.set',
  label: (args) => `keep ${args.name === '' ? args.kind : args.name}`,
  args: v.object({ thing: v.optional(id<'thing'>()), kind, name, fields: v.optional(fields, {}), size, connections }),
  run(draft, args, ctx) {
    const { thing, ...told } = args;
    if (thing !== undefined && !draft.things[thing]) refuse('That thing is no longer in the plan.');
    const made = thing ?? ctx.ids.next('thing');
    draft.things[made] = { id: made, ...told };
    return [made];
  },
  example(plan, rng) {
    const thing = rng.below(2) ? rng.pick(Object.keys(plan.things)) : undefined;
    const size = { widthMm: 400.04, depthMm: 300, heightMm: 700 };
    const told = { kind: 'boiler', name: 'the new one', fields: { inputKwHotWater: 31 } };
    const sized = rng.below(2) ? { ...told, size } : told;
    return thing === undefined ? sized : { ...sized, thing };
  },
});
