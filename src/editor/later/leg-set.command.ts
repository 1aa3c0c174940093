import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { leg } from '../../plan/records/pipework.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Whether a leg was seen or is taken for granted. */
export default defineCommand({
  id: 'leg.set',
  label: (args) => (args.change.sureness === 'seen' ? 'leg was seen' : 'leg is assumed'),
  args: v.object({ leg: id<'leg'>(), change: v.object({ sureness: leg.entries.sureness }) }),
  run(draft, args) {
    change(draft.legs[args.leg] ?? refuse('That leg is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    return leg === undefined ? null : { leg, change: { sureness: rng.pick(['seen', 'assumed']) } };
  },
});
