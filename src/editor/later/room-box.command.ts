import * as v from 'valibot';
import { roomName } from '../../catalogue/room-uses.ts';
import { signedArea } from '../../geometry/outlines.ts';
import { add, scale } from '../../geometry/vec.ts';
import { aliveIn } from '../../network/cases.ts';
import { room, wall } from '../../plan/records/building.ts';
import { xy } from '../../plan/records/parts.ts';
import { type Box, boxWalls } from '../commands/box-walls.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { storey, thicknessMm, construction, sureness } = wall.entries;

/**
 * A room by the four corners of its inside: walls that stand there are taken, those that are missing are drawn, and the
 * space is named. Gives the id of the room, then those of the walls it drew.
 */
export default defineCommand({
  id: 'room.box',
  label: (args) => `draw ${args.use === '' ? 'room' : args.use}`,
  args: v.object({
    storey,
    inside: v.tuple([xy, xy, xy, xy]),
    thicknessMm,
    construction,
    sureness: v.optional(sureness, 'seen'),
    use: v.optional(room.entries.use, ''),
    name: v.optional(room.entries.name),
  }),
  run(draft, args, ctx) {
    const { storey, thicknessMm, construction, sureness, use } = args;
    if (!draft.storeys[storey]) refuse('That floor is no longer there.');
    if (thicknessMm <= 0) refuse('A wall needs a thickness.');
    const inside: Box = args.inside;
    if (Math.abs(signedArea(inside)) < thicknessMm * thicknessMm) refuse('A room needs two corners that are apart.');
    const alive = aliveIn(ctx.before, ctx.chosen);
    const there = Object.values(ctx.before.walls).filter((w) => w.storey === storey && alive.has('walls', w.id));
    const rooms = Object.values(ctx.before.rooms);
    const { walls } = boxWalls(inside, there, thicknessMm);
    const seed = scale(add(inside[0], inside[2]), 0.5);
    const id = ctx.ids.next('room');
    const name = args.name ?? roomName(use, new Set(rooms.map((r) => r.name)));
    const told = { heated: null, floorMm: null, ceilingMm: null, finishes: '', escapeRoute: null };
    draft.rooms[id] = { id, storey, seed, name, use, ...told };
    const made = walls.map(({ a, b }) => {
      const w = ctx.ids.next('w');
      draft.walls[w] = { id: w, storey, a, b, thicknessMm, construction, heightMm: null, sureness, option: null };
      return w;
    });
    return [id, ...made];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const [x, y] = [rng.below(9000) / 7, rng.below(9000) / 7];
    const [w, h] = [1500 + rng.below(3000) / 7, 1200.04];
    const inside = [
      { x, y },
      { x: x + w, y },
      { x: x + w, y: y + h },
      { x, y: y + h },
    ];
    return { storey, inside, thicknessMm: 100, construction: 'block', use: rng.pick(['', 'kitchen', 'hall']) };
  },
});
