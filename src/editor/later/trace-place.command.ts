import * as v from 'valibot';
import { finite, id, mm } from '../../plan/records/parts.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { looseTrace, sayTrace } from '../commands/trace-of.ts';

/** Moves, turns, fades or locks a picture under the drawing. A locked one can only be faded or unlocked. */
export default defineCommand({
  id: 'trace.place',
  label(args, before) {
    const what = sayTrace(before.blobRefs[args.blobRef]);
    if (args.change.locked !== undefined) return `${args.change.locked ? 'lock' : 'unlock'} ${what}`;
    if (args.change.opacity !== undefined) return `fade ${what}`;
    return `${args.change.angleDeg === undefined ? 'move' : 'turn'} ${what}`;
  },
  args: v.object({
    blobRef: id<'blobRef'>(),
    change: v.partial(
      v.object({
        x: mm,
        y: mm,
        angleDeg: finite,
        opacity: v.pipe(finite, v.minValue(0.05, 'quite gone'), v.maxValue(1, 'more than all there')),
        locked: v.boolean(),
      }),
    ),
  }),
  run(draft, args) {
    const { x, y, angleDeg } = args.change;
    const record = draft.blobRefs[args.blobRef] ?? refuse('That picture is no longer there.');
    const place = record.place ?? refuse('That picture does not lie under the drawing.');
    if (args.change.locked !== false && [x, y, angleDeg].some((part) => part !== undefined))
      looseTrace(draft, args.blobRef);
    change(place, args.change);
    return [];
  },
  example(plan, rng) {
    const found = rng.pick(Object.values(plan.blobRefs).filter((b) => b.place !== null));
    const changes = [{ x: 1000.04, y: 20 }, { angleDeg: 90 }, { opacity: 0.25 }, { locked: true }, { locked: false }];
    return found ? { blobRef: found.id, change: rng.pick(changes) } : null;
  },
});
