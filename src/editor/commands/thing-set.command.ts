import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { thing } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from './define-command.ts';

const { kind, name, fields } = thing.entries;

/** A boiler, cylinder, hob… typed from its sheet and carried in the plan. Without `thing` a new one is made. */
export default defineCommand({
  id: 'thing.set',
  label: (args) => `keep ${args.name === '' ? args.kind : args.name}`,
  args: v.object({ thing: v.optional(id<'thing'>()), kind, name, fields: v.optional(fields, {}) }),
  run(draft, args, ctx) {
    if (args.thing !== undefined && !draft.things[args.thing]) refuse('That thing is no longer in the plan.');
    const made = args.thing ?? ctx.ids.next('thing');
    draft.things[made] = { id: made, kind: args.kind, name: args.name, fields: { ...args.fields } };
    return [made];
  },
  example(plan, rng) {
    const thing = rng.below(2) ? rng.pick(Object.keys(plan.things)) : undefined;
    const told = { kind: 'boiler', name: 'the new one', fields: { inputKwHotWater: 31 } };
    return thing === undefined ? told : { ...told, thing };
  },
});
