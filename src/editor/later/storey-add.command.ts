import * as v from 'valibot';
import { storey } from '../../plan/records/building.ts';
import { defineCommand } from '../commands/define-command.ts';

const { name, floorMm, ceilingMm, buildUpMm, sureness } = storey.entries;

export default defineCommand({
  id: 'storey.add',
  label: (args) => `add ${args.name}`,
  args: v.object({ name, floorMm, ceilingMm, buildUpMm, sureness: v.optional(sureness, 'assumed') }),
  run(draft, args, ctx) {
    const id = ctx.ids.next('s');
    draft.storeys[id] = { id, ...args };
    return [id];
  },
  example: (_plan, rng) => ({ name: 'First floor', floorMm: 2650 + rng.below(9) / 7, ceilingMm: 2400, buildUpMm: 250 }),
});
