import * as v from 'valibot';
import { id, mm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Says what a photo is of: a thing of the plan, a place on a floor, or nothing in particular. One takes the place of the other. */
export default defineCommand({
  id: 'blob.pin',
  label: (args) => (args.to === null ? 'take pin out' : 'pin photo'),
  args: v.object({
    blobRef: id<'blobRef'>(),
    to: v.nullable(
      v.variant('is', [
        v.object({ is: v.literal('thing'), id: v.string() }),
        v.object({ is: v.literal('place'), storey: id<'storey'>(), x: mm, y: mm }),
      ]),
    ),
  }),
  run(draft, args) {
    const record = draft.blobRefs[args.blobRef] ?? refuse('That picture is no longer there.');
    if (record.kind !== 'photo') refuse('Only photos are pinned; a picture under the drawing lies where it lies.');
    const { to } = args;
    if (
      to?.is === 'thing' &&
      !draft.points[to.id] &&
      !draft.runs[to.id] &&
      !draft.voids[to.id] &&
      !draft.walls[to.id]
    ) {
      refuse('What it is to be pinned to is no longer there.');
    }
    if (to?.is === 'place' && !draft.storeys[to.storey]) refuse('That floor is no longer there.');
    record.on = to?.is === 'thing' ? to.id : null;
    if (to?.is === 'place') record.pin = { storey: to.storey, x: to.x, y: to.y };
    else delete record.pin;
    return [];
  },
  example(plan, rng) {
    const blobRef = rng.pick(Object.keys(plan.blobRefs));
    const storey = rng.pick(Object.keys(plan.storeys));
    const point = rng.pick(Object.keys(plan.points));
    if (blobRef === undefined || storey === undefined) return null;
    const place = { is: 'place', storey, x: rng.below(9000) / 7, y: 100 };
    const to = rng.pick([null, place, point === undefined ? place : { is: 'thing', id: point }]);
    return { blobRef, to: to ?? null };
  },
});
