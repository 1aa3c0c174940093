import * as v from 'valibot';
import type { Plan } from '../../plan/plan.ts';
import type { Storey } from '../../plan/records/building.ts';
import { type HeightRef, id as idOf, positiveMm, text } from '../../plan/records/parts.ts';
import { type CommandContext, defineCommand, refuse } from '../commands/define-command.ts';

/** The floor that lies highest: a copy goes on top of it. */
function highest(plan: Plan): Storey | undefined {
  return Object.values(plan.storeys).sort((a, b) => b.floorMm - a.floorMm)[0];
}

/** Heights told from what is copied are told from the copy, those from the datum as much higher as the floor lies. */
function retold(height: HeightRef | null, made: ReadonlyMap<string, string>, up: number): HeightRef | null {
  if (!height || height.from === 'datum') return height && { ...height, mm: height.mm + up };
  const of = height.of === null ? undefined : made.get(height.of);
  return of === undefined ? height : { ...height, of };
}

function copyWalls(draft: Plan, from: Storey, to: string, made: Map<string, string>, ctx: CommandContext): void {
  const { before, option, ids } = ctx;
  // Nobody has looked at what is only taken over from the floor below.
  const own = { option, sureness: 'assumed' } as const;
  for (const wall of Object.values(before.walls)) {
    if (wall.storey !== from.id) continue;
    const copy = ids.next('w');
    made.set(wall.id, copy);
    draft.walls[copy] = { ...structuredClone(wall), ...own, id: copy, storey: to };
  }
  for (const opening of Object.values(before.openings)) {
    const wall = made.get(opening.wall);
    if (wall === undefined) continue;
    const copy = ids.next('o');
    draft.openings[copy] = { ...structuredClone(opening), ...own, id: copy, wall };
  }
}

/** A room over another has its walls and nothing else: what it is called and used for is asked anew. */
function copyRooms(draft: Plan, from: Storey, to: string, made: Map<string, string>, ctx: CommandContext): void {
  const untold = { name: '', use: '', heated: null, floorMm: null, ceilingMm: null, finishes: '', escapeRoute: null };
  for (const room of Object.values(ctx.before.rooms)) {
    if (room.storey !== from.id) continue;
    const copy = ctx.ids.next('room');
    made.set(room.id, copy);
    draft.rooms[copy] = { id: copy, storey: to, seed: { ...room.seed }, ...untold };
  }
}

function copyVoids(draft: Plan, from: Storey, to: string, made: Map<string, string>, ctx: CommandContext): void {
  const up = (draft.storeys[to]?.floorMm ?? 0) - from.floorMm;
  const voids = Object.values(ctx.before.voids).filter((one) => one.storey === from.id);
  for (const one of voids) made.set(one.id, ctx.ids.next('v'));
  for (const one of voids) {
    const copy = structuredClone(one);
    const id = made.get(one.id) ?? ctx.ids.next('v');
    draft.voids[id] = {
      ...copy,
      id,
      storey: to,
      bottom: retold(copy.bottom, made, up),
      top: retold(copy.top, made, up),
      joists: copy.joists && { ...copy.joists, bottom: retold(copy.joists.bottom, made, up) },
      option: ctx.option,
      sureness: 'assumed',
    };
  }
}

/**
 * Walls, openings and rooms of a floor once more, as the floor on top of the highest: over its ceiling by the build-up.
 * Everything of it is assumed until it is measured. Pipework and things stay below.
 */
export default defineCommand({
  id: 'storey.duplicate',
  label: (args, before) => `copy ${before.storeys[args.storey]?.name || 'floor'} upward`,
  args: v.object({
    storey: idOf<'storey'>(),
    name: text,
    voids: v.optional(v.boolean(), false),
    ceilingMm: v.optional(positiveMm),
  }),
  run(draft, args, ctx) {
    const from = ctx.before.storeys[args.storey] ?? refuse('That floor is no longer there.');
    const top = highest(ctx.before) ?? from;
    if (args.name.trim() === '') refuse('A floor needs a name.');
    const to = ctx.ids.next('s');
    const ceilingMm = args.ceilingMm ?? from.ceilingMm;
    draft.storeys[to] = {
      id: to,
      name: args.name,
      floorMm: top.floorMm + top.ceilingMm + from.buildUpMm,
      ceilingMm,
      buildUpMm: from.buildUpMm,
      sureness: 'assumed',
    };
    const made = new Map<string, string>([[from.id, to]]);
    copyWalls(draft, from, to, made, ctx);
    copyRooms(draft, from, to, made, ctx);
    if (args.voids) copyVoids(draft, from, to, made, ctx);
    return [to];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    return storey === undefined ? null : { storey, name: 'Upper floor', voids: rng.below(2) === 0 };
  },
});
