import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { leg } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Lagging of several legs at once; null takes it off. */
export default defineCommand({
  id: 'legs.insulate',
  label: (args) => (args.insulation ? `lag ${args.insulation.thicknessMm}` : 'take off lagging'),
  args: v.object({
    legs: v.pipe(v.array(id<'leg'>()), v.minLength(1, 'choose legs to lag')),
    insulation: leg.entries.insulation,
  }),
  run(draft, { legs, insulation }) {
    for (const one of legs) {
      const record = draft.legs[one] ?? refuse('Some of it is no longer there.');
      record.insulation = insulation && { ...insulation };
    }
    return [];
  },
  example(plan, rng) {
    const all = Object.keys(plan.legs);
    const legs = [...new Set([rng.pick(all), rng.pick(all)])].flatMap((one) => one ?? []);
    const insulation = rng.pick([null, { kind: 'foam', thicknessMm: 13 }, { kind: 'foam', thicknessMm: 19.06 }]);
    return legs.length === 0 ? null : { legs, insulation };
  },
});
