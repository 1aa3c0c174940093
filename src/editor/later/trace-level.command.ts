import * as v from 'valibot';
import { toNearestQuarter, turnedAbout } from '../../geometry/trace-place.ts';
import { distance } from '../../geometry/vec.ts';
import { id, xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { looseTrace, sayTrace } from '../commands/trace-of.ts';

/** Turns the picture so that a line tapped on it lies level or upright, whichever is nearer. `a` stays. */
export default defineCommand({
  id: 'trace.level',
  label: (args, before) => `turn ${sayTrace(before.blobRefs[args.blobRef])}`,
  args: v.object({ blobRef: id<'blobRef'>(), a: xy, b: xy }),
  run(draft, args) {
    const { record, place } = looseTrace(draft, args.blobRef);
    if (distance(args.a, args.b) < COINCIDENT_MM)
      refuse('The two places lie on one another: tap along something that is level or upright.');
    record.place = turnedAbout(place, args.a, toNearestQuarter(args.a, args.b));
    return [];
  },
  example(plan, rng) {
    const found = rng.pick(Object.values(plan.blobRefs).filter((b) => b.place !== null));
    return found ? { blobRef: found.id, a: { x: 0, y: 0 }, b: { x: 1000, y: rng.below(200) } } : null;
  },
});
