import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Takes a picture off the plan. Its bytes are kept by whoever keeps them, as undo may want them again. */
export default defineCommand({
  id: 'blob.delete',
  label: (args, before) => `take off ${before.blobRefs[args.blobRef]?.kind ?? 'picture'}`,
  args: v.object({ blobRef: id<'blobRef'>() }),
  run(draft, args) {
    if (!draft.blobRefs[args.blobRef]) refuse('That picture is no longer there.');
    delete draft.blobRefs[args.blobRef];
    return [];
  },
  example(plan, rng) {
    const blobRef = rng.pick(Object.keys(plan.blobRefs));
    return blobRef === undefined ? null : { blobRef };
  },
});
