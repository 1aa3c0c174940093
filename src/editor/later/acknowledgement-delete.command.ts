import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

export default defineCommand({
  id: 'acknowledgement.delete',
  label: () => 'open finding again',
  args: v.object({ acknowledgement: id<'acknowledgement'>() }),
  run(draft, args) {
    if (!draft.acknowledgements[args.acknowledgement]) refuse('That note is no longer there.');
    delete draft.acknowledgements[args.acknowledgement];
    return [];
  },
  example(plan, rng) {
    const acknowledgement = rng.pick(Object.keys(plan.acknowledgements));
    return acknowledgement === undefined ? null : { acknowledgement };
  },
});
