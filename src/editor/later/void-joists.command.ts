import * as v from 'valibot';
import { joists } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { mustStand } from '../commands/height-stands.ts';

const { kind, wayDeg, centresMm, first, depthMm, breadthMm, bottom, spanMm } = joists.entries;
const SAME_DEG = 0.001;

/**
 * What is known of the joists of a void now. What is told is assumed no longer. `assumed` names figures that are told but
 * still nobody's: an underside that follows from a depth. Turned joists are counted anew, so single ones are forgotten.
 */
export default defineCommand({
  id: 'void.joists',
  label: (args, before) => `change joists of ${called(before, args.void, 'void')}`,
  args: v.object({
    void: id<'void'>(),
    change: v.partial(v.object({ kind, wayDeg, centresMm, first, depthMm, breadthMm, bottom, spanMm })),
    assumed: v.optional(v.array(v.picklist(['first', 'bottom'])), []),
  }),
  run(draft, args) {
    const space = draft.voids[args.void] ?? refuse('That void is no longer there.');
    const grid = space.joists ?? refuse('No joists were told of this void.');
    const turned = args.change.wayDeg !== undefined && Math.abs(args.change.wayDeg - grid.wayDeg) > SAME_DEG;
    if (args.change.centresMm !== undefined && args.change.centresMm <= 0) refuse('Joists cannot lie at no centres.');
    if (turned) grid.exceptions = [];
    change(grid, args.change);
    mustStand(draft, args.change.bottom);
    const told = Object.keys(args.change).filter((key) => Reflect.get(args.change, key) !== undefined);
    const still = (grid.assumed ?? []).filter((key) => !told.includes(key));
    const assumed = [...new Set([...still, ...args.assumed])];
    if (assumed.length > 0) grid.assumed = assumed;
    else delete grid.assumed;
    return [];
  },
  example(plan, rng) {
    const space = rng.pick(Object.values(plan.voids).filter((x) => x.joists));
    if (!space) return null;
    const changes = [
      { kind: 'engineered' },
      { wayDeg: 90 },
      { centresMm: 450 },
      { depthMm: null },
      { breadthMm: 63.04 },
      { first: { x: 100, y: 100 } },
      { bottom: null },
      { spanMm: 3000 },
    ];
    return { void: space.id, change: rng.pick(changes) };
  },
});
