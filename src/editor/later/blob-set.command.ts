import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { blobRef } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { hash, kind, name, mediaType, on, place, pixels, pin } = blobRef.entries;

/** Pins a photo, sheet or traced plan, whose bytes lie elsewhere. Without `blobRef` a new one is made. */
export default defineCommand({
  id: 'blob.set',
  label: (args) => `pin ${args.kind}`,
  args: v.object({
    blobRef: v.optional(id<'blobRef'>()),
    hash,
    kind,
    name: v.optional(name, ''),
    mediaType,
    on: v.optional(on, null),
    place: v.optional(place, null),
    pixels,
    pin,
  }),
  run(draft, args, ctx) {
    const { blobRef, ...told } = args;
    if (blobRef !== undefined && !draft.blobRefs[blobRef]) refuse('That picture is no longer there.');
    const made = blobRef ?? ctx.ids.next('b');
    draft.blobRefs[made] = { id: made, ...told };
    return [made];
  },
  example(plan, rng) {
    const mediaType = 'image/png';
    if (rng.below(3) > 0) {
      const place = { x: 20.04, y: 0, mmPerPixel: 5, angleDeg: 0, opacity: 0.5, locked: false };
      const on = rng.pick(Object.keys(plan.storeys)) ?? null;
      return { hash: 'abc', kind: 'trace', mediaType, on, place, pixels: { width: 1200, height: 900 } };
    }
    return {
      hash: 'abc',
      kind: rng.pick(['photo', 'sheet']),
      mediaType,
      on: rng.pick(Object.keys(plan.points)) ?? null,
    };
  },
});
