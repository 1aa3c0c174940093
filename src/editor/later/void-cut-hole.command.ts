import * as v from 'valibot';
import { insideOutline, signedArea } from '../../geometry/outlines.ts';
import { id, outline } from '../../plan/records/parts.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** A hole in a void, as for a stair: joists end at it. */
export default defineCommand({
  id: 'void.cutHole',
  label: (args, before) => `cut a hole in ${called(before, args.void, 'void')}`,
  args: v.object({ void: id<'void'>(), hole: outline }),
  run(draft, { void: of, hole }) {
    const space = draft.voids[of] ?? refuse('That void is no longer there.');
    const touches =
      hole.some((p) => insideOutline(p, space.outline)) || space.outline.some((p) => insideOutline(p, hole));
    if (!touches) refuse('That hole lies outside the void.');
    if (Math.abs(signedArea(hole)) >= Math.abs(signedArea(space.outline)))
      refuse('That hole is larger than the void. Delete the void instead.');
    space.holes.push(hole.map((p) => ({ ...p })));
    return [];
  },
  example(plan, rng) {
    const space = rng.pick(Object.values(plan.voids));
    const [p] = space?.outline ?? [];
    if (!space || !p) return null;
    const size = 40 + rng.below(100);
    const hole = [p, { x: p.x + size, y: p.y }, { x: p.x + size, y: p.y + size }, { x: p.x, y: p.y + size }];
    return { void: space.id, hole };
  },
});
