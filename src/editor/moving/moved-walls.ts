import { add, cross, distance, dot, length, scale, sub, unit } from '../../geometry/vec.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import { JOINT_MM } from '../../geometry/wall-joints.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM, quantise } from '../../plan/units.ts';
import { NotMoved } from './not-moved.ts';

/** Where the ends of walls go. A wall that is named goes whole or by one end; others follow by what joins them to it. */
export type WallMove =
  | { readonly wall: string; readonly by: Xy }
  | { readonly wall: string; readonly end: 'a' | 'b'; readonly to: Xy };

type Ends = { a: Xy; b: Xy };

const same = (p: Xy, q: Xy): boolean => distance(p, q) < COINCIDENT_MM;

/** Does an end stand on a wall, or just short of it? */
function meets(end: Xy, wall: Wall): boolean {
  const along = unit(sub(wall.b, wall.a));
  const d = sub(end, wall.a);
  const s = dot(d, along);
  const off = length(sub(d, scale(along, s)));
  const reach = wall.thicknessMm / 2 + JOINT_MM;
  return off <= reach && s >= -reach && s <= wallLength(wall) + reach;
}

function toldEnds(plan: Plan, moves: readonly WallMove[]): Map<string, Ends> {
  const told = new Map<string, Ends>();
  for (const move of moves) {
    const wall = plan.walls[move.wall];
    if (!wall) throw new NotMoved('That wall is no longer there.');
    const ends = told.get(wall.id) ?? { a: wall.a, b: wall.b };
    if ('by' in move) told.set(wall.id, { a: add(ends.a, move.by), b: add(ends.b, move.by) });
    else told.set(wall.id, { ...ends, [move.end]: move.to });
  }
  return told;
}

/** Walls that make no more of an angle than this lie in line: their ends have no crossing to slide to. */
const LEAST_SIN = 0.1;

/**
 * How far a wall is drawn out along itself so that its end keeps its place across the moved one. In line it only goes
 * along with one that is pushed along itself; one that is moved aside leaves it where it is.
 */
function alongItself(wall: Wall, moved: Wall, by: Xy): number {
  const [along, way] = [unit(sub(wall.b, wall.a)), unit(sub(moved.b, moved.a))];
  const sin = cross(along, way);
  if (Math.abs(sin) >= LEAST_SIN) return cross(by, way) / sin;
  return Math.abs(cross(by, way)) < COINCIDENT_MM ? dot(by, along) : 0;
}

/** How far an end of another wall goes: with a corner exactly, onto a moved wall only along itself. */
function pulled(plan: Plan, told: ReadonlyMap<string, Ends>, wall: Wall, end: Xy): Xy {
  for (const [id, ends] of told) {
    const moved = plan.walls[id];
    if (!moved || moved.storey !== wall.storey) continue;
    if (same(end, moved.a)) return sub(ends.a, moved.a);
    if (same(end, moved.b)) return sub(ends.b, moved.b);
  }
  for (const [id, ends] of told) {
    const moved = plan.walls[id];
    const by = moved && sub(ends.a, moved.a);
    if (!moved || !by || moved.storey !== wall.storey || !same(by, sub(ends.b, moved.b)) || !meets(end, moved))
      continue;
    return scale(unit(sub(wall.b, wall.a)), alongItself(wall, moved, by));
  }
  return { x: 0, y: 0 };
}

/** Set from an end that went along the wall, a thing keeps its place in the house by a changed distance. */
function kept(before: Wall, after: Wall, from: 'a' | 'b', alongMm: number): number {
  const along = unit(sub(before.b, before.a));
  const turned = Math.abs(dot(unit(sub(after.b, after.a)), along)) < 1 - 1e-9;
  const [ga, gb] = [sub(after.a, before.a), sub(after.b, before.b)];
  const whole = same(ga, gb);
  if (turned || whole) return alongMm;
  return from === 'a' ? alongMm - dot(ga, along) : alongMm + dot(gb, along);
}

/**
 * The plan with walls moved and the walls that join them drawn out or shortened. Openings and points keep their place in
 * the house on walls that only changed in length, and go along on walls that moved. Pipes are not looked at here.
 */
export function movedWalls(plan: Plan, moves: readonly WallMove[]): Plan {
  const told = toldEnds(plan, moves);
  const walls = { ...plan.walls };
  const changed = new Map<string, { before: Wall; after: Wall }>();
  for (const wall of Object.values(plan.walls)) {
    const ends = told.get(wall.id) ?? {
      a: add(wall.a, pulled(plan, told, wall, wall.a)),
      b: add(wall.b, pulled(plan, told, wall, wall.b)),
    };
    const at = (p: Xy): Xy => ({ x: quantise(p.x), y: quantise(p.y) });
    if (same(ends.a, wall.a) && same(ends.b, wall.b)) continue;
    const after = { ...wall, a: { ...wall.a, ...at(ends.a) }, b: { ...wall.b, ...at(ends.b) } };
    if (wallLength(after) < COINCIDENT_MM) throw new NotMoved('A wall would have no length left.');
    walls[wall.id] = after;
    changed.set(wall.id, { before: wall, after });
  }
  const openings = { ...plan.openings };
  for (const o of Object.values(plan.openings)) {
    const c = changed.get(o.wall);
    if (!c) continue;
    const alongMm = quantise(kept(c.before, c.after, o.from, o.alongMm));
    if (alongMm < 0 || alongMm + o.widthMm > wallLength(c.after) + COINCIDENT_MM) {
      throw new NotMoved(`${o.name === '' ? `The ${o.kind}` : o.name} would no longer fit in its wall.`);
    }
    if (alongMm !== o.alongMm) openings[o.id] = { ...o, alongMm };
  }
  const points = { ...plan.points };
  for (const p of Object.values(plan.points)) {
    const c = p.place.on === 'wall' ? changed.get(p.place.wall) : undefined;
    if (p.place.on !== 'wall' || !c) continue;
    const alongMm = quantise(kept(c.before, c.after, p.place.from, p.place.alongMm));
    if (alongMm !== p.place.alongMm) points[p.id] = { ...p, place: { ...p.place, alongMm } };
  }
  return { ...plan, walls, openings, points };
}
