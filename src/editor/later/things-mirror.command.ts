import * as v from 'valibot';
import { length } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import { id, xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { dropLoose } from '../commands/move-things.ts';
import { mirrorThings, type ToMirror } from '../many/mirror-things.ts';
import { mirrorAbout } from '../many/reflect.ts';
import { adopt } from '../moving/adopt.ts';

const MAPS = ['walls', 'points', 'voids', 'rooms', 'runs', 'legs', 'stretches', 'openings', 'nodes', 'items'] as const;
type Thing = { readonly map: (typeof MAPS)[number]; readonly id: string };

/** Pieces of pipe stand for their run; doors go with their wall, corners and valves with their pipe. */
export function toMirror(plan: Plan, things: readonly Thing[]): ToMirror {
  const of = (map: Thing['map']): string[] => things.filter((t) => t.map === map).map((t) => t.id);
  const runs = [
    ...of('runs'),
    ...of('legs').flatMap((leg) => plan.legs[leg]?.run ?? []),
    ...of('stretches').flatMap((one) => plan.stretches[one]?.run ?? []),
  ];
  return { walls: of('walls'), points: of('points'), voids: of('voids'), rooms: of('rooms'), runs: [...new Set(runs)] };
}

/** Mirrors what is chosen about a line of the plan, itself or as a copy of what is in hand. */
export default defineCommand({
  id: 'things.mirror',
  label: ({ things, copy }) => {
    const what = things.length === 1 ? '' : ` ${things.length} things`;
    return copy ? `mirrored copy${what && ` of${what}`}` : `mirror${what}`;
  },
  args: v.object({
    things: v.pipe(
      v.array(v.object({ map: v.picklist(MAPS), id: id() })),
      v.minLength(1, 'choose walls, points, voids or runs to mirror'),
    ),
    /** A place on the line, and the way it runs. */
    at: xy,
    along: xy,
    copy: v.boolean(),
  }),
  run(draft, args, ctx) {
    const chosen = toMirror(ctx.before, args.things);
    if (Object.values(chosen).every((ids) => ids.length === 0))
      refuse('Choose walls, points, voids or runs to mirror.');
    if (length(args.along) < COINCIDENT_MM) refuse('The line to mirror about has no way to run.');
    const { plan, names } = mirrorThings(chosen, mirrorAbout(args.at, args.along), args.copy, ctx);
    adopt(draft, ctx.before, plan);
    for (const [of, record] of Object.entries(plan.voids))
      if (ctx.before.voids[of] !== record) draft.voids[of] = record;
    for (const [of, record] of Object.entries(plan.rooms))
      if (ctx.before.rooms[of] !== record) draft.rooms[of] = record;
    dropLoose(draft, ctx);
    if (!args.copy) return [];
    const first = [...chosen.walls, ...chosen.points, ...chosen.voids, ...chosen.runs].flatMap(
      (of) => names.get(of) ?? [],
    );
    return [...first, ...[...names.values()].filter((name) => !first.includes(name))];
  },
  example(plan, rng) {
    const all = (['walls', 'points', 'voids', 'runs'] as const).flatMap((map) =>
      Object.keys(plan[map]).map((thing) => ({ map, id: thing })),
    );
    const [one, other] = [rng.pick(all), rng.pick(all)];
    if (!one) return null;
    const things = other && other.id !== one.id ? [one, other] : [one];
    const along = rng.pick([
      { x: 0, y: 1 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
    ]) ?? { x: 0, y: 1 };
    return { things, at: { x: rng.below(4000) / 3, y: rng.below(4000) / 3 }, along, copy: rng.below(2) === 0 };
  },
});
