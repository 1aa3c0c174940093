import * as v from 'valibot';
import { distance } from '../../geometry/vec.ts';
import { wall } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { storey, a, b, thicknessMm, construction, heightMm, sureness } = wall.entries;

const WORDS = { draw: 'draw wall', close: 'close the walls', spread: 'spread the closing error' } as const;

/** Walls told as one chain: those with an id are laid anew, the others are drawn. Gives the ids of all, in order. */
export default defineCommand({
  id: 'wall.chain',
  label: (args) => WORDS[args.why],
  args: v.object({
    why: v.optional(v.picklist(['draw', 'close', 'spread']), 'draw'),
    storey,
    walls: v.pipe(
      v.array(v.object({ wall: v.optional(id<'wall'>()), a, b, thicknessMm })),
      v.minLength(1, 'tell at least one wall'),
    ),
    construction,
    heightMm: v.optional(heightMm, null),
    sureness: v.optional(sureness, 'seen'),
  }),
  run(draft, args, ctx) {
    const { storey, construction, heightMm, sureness } = args;
    if (!draft.storeys[storey]) refuse('That floor is no longer there.');
    return args.walls.map(({ wall: there, a, b, thicknessMm }) => {
      if (distance(a, b) < COINCIDENT_MM) refuse('A wall needs two places.');
      if (thicknessMm <= 0) refuse('A wall needs a thickness.');
      if (there !== undefined) {
        const record = draft.walls[there] ?? refuse('That wall is no longer there.');
        Object.assign(record, { a, b });
        return there;
      }
      const made = ctx.ids.next('w');
      draft.walls[made] = { id: made, storey, a, b, thicknessMm, construction, heightMm, sureness, option: null };
      return made;
    });
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const there = rng.pick(Object.values(plan.walls).filter((w) => w.storey === storey));
    const [x, y] = [rng.below(9000) / 7, rng.below(9000) / 7];
    const corner = { x: x + 2000.04, y };
    const walls = [
      { ...(there ? { wall: there.id } : {}), a: { x, y }, b: corner, thicknessMm: 100 },
      { a: corner, b: { x: corner.x, y: y + 1500 }, thicknessMm: 140 },
    ];
    return { storey, walls, construction: 'block', why: rng.pick(['draw', 'close', 'spread']) };
  },
});
