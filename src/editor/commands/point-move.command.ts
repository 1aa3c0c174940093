import * as v from 'valibot';
import { id, xyz } from '../../plan/records/parts.ts';
import { point } from '../../plan/records/pipework.ts';
import { called } from './change-of.ts';
import { defineCommand } from './define-command.ts';
import { someMove } from './example-moves.ts';
import { moveThings } from './move-things.ts';

/** Moves a boiler, meter, tap… with all that meets it: by so far, or to another place, on a wall or off it. */
export default defineCommand({
  id: 'point.move',
  label: (args, before) => `move ${called(before, args.point, 'point').toLowerCase()}`,
  args: v.union([
    v.object({ point: id<'point'>(), by: xyz }),
    v.object({ point: id<'point'>(), place: point.entries.place }),
  ]),
  run: (draft, args, ctx) => moveThings(draft, [args], ctx),
  example(plan, rng) {
    const p = rng.pick(Object.values(plan.points));
    const wall = rng.pick(Object.keys(plan.walls));
    if (!p) return null;
    if (wall === undefined || rng.below(3) > 0) return { point: p.id, by: someMove(rng) };
    const along = { alongMm: rng.below(900) / 7, standOffMm: 0, height: p.place.height };
    return { point: p.id, place: { on: 'wall', wall, side: 'left', from: 'a', ...along } };
  },
});
