import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { blobRef } from '../../plan/records/statements.ts';
import { change } from './change-of.ts';
import { defineCommand, refuse } from './define-command.ts';

const { hash, name, mediaType, pixels } = blobRef.entries;

/** Names a picture anew, or puts another in its place: where it is pinned and what it is called stay. */
export default defineCommand({
  id: 'blob.change',
  label: (args) => (args.change.hash === undefined ? 'name picture' : 'change picture'),
  args: v.object({ blobRef: id<'blobRef'>(), change: v.partial(v.object({ hash, name, mediaType, pixels })) }),
  run(draft, args) {
    const record = draft.blobRefs[args.blobRef] ?? refuse('That picture is no longer there.');
    change(record, args.change);
    return [];
  },
  example(plan, rng) {
    const blobRef = rng.pick(Object.keys(plan.blobRefs));
    const changed = rng.pick([{ name: 'old flue' }, { hash: 'def', pixels: { width: 640, height: 480 } }]);
    return blobRef === undefined ? null : { blobRef, change: changed };
  },
});
