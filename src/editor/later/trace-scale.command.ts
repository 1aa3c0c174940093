import * as v from 'valibot';
import { scaledAbout } from '../../geometry/trace-place.ts';
import { distance } from '../../geometry/vec.ts';
import { id, positiveMm, xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { looseTrace, sayTrace } from '../commands/trace-of.ts';

/** A length somebody knows, between two places tapped on the picture: `a` stays, and the picture grows or shrinks about it. */
export default defineCommand({
  id: 'trace.scale',
  label: (args, before) => `scale ${sayTrace(before.blobRefs[args.blobRef])}`,
  args: v.object({ blobRef: id<'blobRef'>(), a: xy, b: xy, lengthMm: positiveMm }),
  run(draft, args) {
    const { record, place } = looseTrace(draft, args.blobRef);
    const drawn = distance(args.a, args.b);
    if (drawn < COINCIDENT_MM)
      refuse('The two places lie on one another: tap two ends of something you know the length of.');
    if (args.lengthMm < COINCIDENT_MM) refuse('A length of nothing gives no scale.');
    record.place = scaledAbout(place, args.a, args.lengthMm / drawn);
    return [];
  },
  example(plan, rng) {
    const found = rng.pick(Object.values(plan.blobRefs).filter((b) => b.place !== null));
    return found
      ? { blobRef: found.id, a: { x: 0, y: 0 }, b: { x: 300, y: 400 }, lengthMm: 762 + rng.below(90) }
      : null;
  },
});
