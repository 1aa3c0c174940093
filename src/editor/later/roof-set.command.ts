import * as v from 'valibot';
import { roof } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { mustStand } from '../commands/height-stands.ts';

const { storey, outline, eaves, pitchDeg, rafters, sureness } = roof.entries;

/** A sloping plane that bounds height. Without `roof` a new one is made. */
export default defineCommand({
  id: 'roof.set',
  label: (args) => (args.roof === undefined ? 'draw roof' : 'change roof'),
  args: v.object({
    roof: v.optional(id<'roof'>()),
    storey,
    outline,
    eaves,
    pitchDeg,
    rafters: v.optional(rafters, null),
    sureness: v.optional(sureness, 'assumed'),
  }),
  run(draft, args, ctx) {
    const { roof: of, ...told } = args;
    if (of !== undefined && !draft.roofs[of]) refuse('That roof is no longer there.');
    if (!draft.storeys[told.storey]) refuse('That floor is no longer there.');
    mustStand(draft, told.eaves.height);
    const made = of ?? ctx.ids.next('roof');
    draft.roofs[made] = { id: made, ...told };
    return [made];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const a = { x: 0, y: 0 };
    const b = { x: 4000.04, y: 0 };
    const height = { from: 'ceiling', of: storey, mm: 100 };
    return { storey, outline: [a, b, { x: 4000, y: 3000 }], eaves: { a, b, height }, pitchDeg: 30 + rng.below(15) };
  },
});
