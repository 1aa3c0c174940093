import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Selected } from '../editor-api.ts';
import type { CommandContext } from './define-command.ts';
import { heightOf } from './place-arg.ts';

const moved = (p: Xy, by: Xy): Xy => ({ x: p.x + by.x, y: p.y + by.y });

/** A record of the plan before, free to be changed. */
const copyOf = <T>(record: T): T => structuredClone(record);

function copyWall(draft: Plan, id: string, by: Xy, ctx: CommandContext): string[] {
  const wall = ctx.before.walls[id];
  if (!wall) return [];
  const made = ctx.ids.next('w');
  draft.walls[made] = { ...copyOf(wall), id: made, a: moved(wall.a, by), b: moved(wall.b, by), option: ctx.option };
  const openings = Object.values(ctx.before.openings).filter((o) => o.wall === id);
  return [
    made,
    ...openings.map((o) => {
      const opening = ctx.ids.next('o');
      draft.openings[opening] = { ...copyOf(o), id: opening, wall: made, option: ctx.option };
      return opening;
    }),
  ];
}

/** On a wall the copy slides along it by as much of the way as goes along; free, it goes all the way. */
function copyPoint(draft: Plan, id: string, by: Xy, ctx: CommandContext): string[] {
  const point = ctx.before.points[id];
  if (!point) return [];
  const made = ctx.ids.next('p');
  const copy = { ...copyOf(point), id: made, option: ctx.option };
  if (copy.place.on === 'storey') copy.place = { ...copy.place, ...moved(copy.place, by) };
  else {
    const wall = ctx.before.walls[copy.place.wall];
    const length = wall ? Math.hypot(wall.b.x - wall.a.x, wall.b.y - wall.a.y) : 0;
    const along = wall && length > 0 ? (by.x * (wall.b.x - wall.a.x) + by.y * (wall.b.y - wall.a.y)) / length : 0;
    const from = copy.place.alongMm + (copy.place.from === 'a' ? along : -along);
    copy.place = { ...copy.place, alongMm: Math.min(Math.max(from, 0), length) };
  }
  draft.points[made] = copy;
  return [made];
}

/** A copied run meets nothing: its ends are open, wherever the first one's were. */
function copyRun(draft: Plan, id: string, by: Xy, ctx: CommandContext): string[] {
  const run = ctx.before.runs[id];
  if (!run) return [];
  const made = ctx.ids.next('r');
  draft.runs[made] = { ...copyOf(run), id: made, option: ctx.option };
  const nodes = new Map<string, string>();
  const nodeOf = (old: string): string | undefined => {
    const there = nodes.get(old);
    const node = ctx.before.nodes[old];
    const place = node && nodePlace(ctx.before, node);
    if (there !== undefined || !node || !place) return there;
    const copy = ctx.ids.next('n');
    nodes.set(old, copy);
    const at = moved(place.at, by);
    const height = copyOf(heightOf(node));
    draft.nodes[copy] = {
      ...copyOf(node),
      id: copy,
      place: { on: 'storey', storey: place.storey, ...at, height },
      option: ctx.option,
    };
    return copy;
  };
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(ctx.before[map])) {
      const a = pipe.run === id ? nodeOf(pipe.a) : undefined;
      const b = pipe.run === id ? nodeOf(pipe.b) : undefined;
      if (a === undefined || b === undefined) continue;
      const copy = ctx.ids.next(map === 'legs' ? 'l' : 'u');
      const record = { ...copyOf(pipe), id: copy, run: made, a, b, option: ctx.option };
      (draft[map] as Record<string, typeof record>)[copy] = record;
    }
  }
  return [made, ...nodes.values()];
}

function copyVoid(draft: Plan, id: string, by: Xy, ctx: CommandContext): string[] {
  const was = ctx.before.voids[id];
  if (!was) return [];
  const made = ctx.ids.next('v');
  const copy = copyOf(was);
  draft.voids[made] = {
    ...copy,
    id: made,
    outline: copy.outline.map((p) => moved(p, by)),
    holes: copy.holes.map((hole) => hole.map((p) => moved(p, by))),
    bearings: copy.bearings.map((b) => ({ a: moved(b.a, by), b: moved(b.b, by) })),
    joists: copy.joists && { ...copy.joists, first: moved(copy.joists.first, by) },
    option: ctx.option,
  };
  return [made];
}

/** Copies of things, `by` mm away. Gives the ids made, those that were asked for first. */
export function duplicate(draft: Plan, things: readonly Selected[], by: Xy, ctx: CommandContext): string[] {
  const made = things.map(({ map, id }) => {
    if (map === 'walls') return copyWall(draft, id, by, ctx);
    if (map === 'points') return copyPoint(draft, id, by, ctx);
    if (map === 'runs') return copyRun(draft, id, by, ctx);
    return map === 'voids' ? copyVoid(draft, id, by, ctx) : [];
  });
  return [...made.flatMap((m) => m.slice(0, 1)), ...made.flatMap((m) => m.slice(1))];
}
