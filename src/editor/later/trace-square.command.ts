import * as v from 'valibot';
import { squaredBy } from '../../geometry/trace-place.ts';
import { id, positiveMm, xy } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { looseTrace, sayTrace } from '../commands/trace-of.ts';

/**
 * Squares a photo taken at a slant by four corners of something upright and known, a door or a window: lower left, lower
 * right, upper right, upper left as tapped. Squares and scales in one.
 */
export default defineCommand({
  id: 'trace.square',
  label: (args, before) => `square ${sayTrace(before.blobRefs[args.blobRef])}`,
  args: v.object({
    blobRef: id<'blobRef'>(),
    corners: v.pipe(v.array(xy), v.length(4, 'a rectangle has four corners')),
    widthMm: positiveMm,
    heightMm: positiveMm,
  }),
  run(draft, args) {
    const { record, place, pixels } = looseTrace(draft, args.blobRef);
    const squared = squaredBy(place, pixels, args.corners, args.widthMm, args.heightMm);
    record.place =
      squared ??
      refuse('Those four corners make no rectangle: tap lower left, lower right, upper right, upper left of it.');
    return [];
  },
  example(plan, rng) {
    const found = rng.pick(Object.values(plan.blobRefs).filter((b) => b.place !== null));
    const far = 700 + rng.below(90);
    const corners = [
      { x: 0, y: 0 },
      { x: far, y: 30 },
      { x: 680, y: 2000 },
      { x: 20, y: 1900 },
    ];
    return found ? { blobRef: found.id, corners, widthMm: 762, heightMm: 1981 } : null;
  },
});
