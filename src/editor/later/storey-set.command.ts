import * as v from 'valibot';
import { storey } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { name, floorMm, ceilingMm, buildUpMm, sureness } = storey.entries;

/** Measures a storey again: what was set from its floor or ceiling follows. */
export default defineCommand({
  id: 'storey.set',
  label: (args, before) => `measure ${called(before, args.storey, 'floor')}`,
  args: v.object({
    storey: id<'storey'>(),
    change: v.partial(v.object({ name, floorMm, ceilingMm, buildUpMm, sureness })),
  }),
  run(draft, args) {
    change(draft.storeys[args.storey] ?? refuse('That floor is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    const changes = [{ ceilingMm: 2312.34 }, { name: 'Ground' }, { sureness: 'seen' }, { floorMm: 20 }];
    return storey === undefined ? null : { storey, change: rng.pick(changes) };
  },
});
