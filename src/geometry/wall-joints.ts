import type { Wall } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';
import { add, cross, dot, left, scale, sub, unit } from './vec.ts';
import { wallLength } from './wall-frame.ts';

/** Wall ends this much further off than half the other wall's thickness still join it. */
export const JOINT_MM = 15;

export type End = 'a' | 'b';

/** One end of a wall: where it is, and the way out of the wall there. */
export interface WallEnd {
  readonly wall: Wall;
  readonly end: End;
  readonly at: Xy;
  readonly out: Xy;
}

/**
 * How the end of a wall meets another. `butt`: it runs into the body of the other. `corner`: the two end together at an
 * angle, at `at`, where their centrelines cross. `line`: the two end together in line.
 */
export type Joint =
  | { readonly is: 'butt'; readonly other: Wall; readonly at: Xy }
  | { readonly is: 'corner'; readonly other: WallEnd; readonly at: Xy }
  | { readonly is: 'line'; readonly other: WallEnd };

/** Walls that lean less than this to each other have no useful crossing of centrelines. */
const IN_LINE = Math.sin((5 * Math.PI) / 180);

export function wallEnd(wall: Wall, end: End): WallEnd {
  const out = unit(end === 'a' ? sub(wall.a, wall.b) : sub(wall.b, wall.a));
  return { wall, end, at: wall[end], out };
}

const reach = (wall: Wall): number => wall.thicknessMm / 2 + JOINT_MM;

/** Places along and off the centreline of `wall`, from its end `a`. */
function seenFrom(wall: Wall, p: Xy): { u: number; v: number } {
  const along = unit(sub(wall.b, wall.a));
  const d = sub(p, wall.a);
  return { u: dot(d, along), v: dot(d, left(along)) };
}

/** Near enough to join: measured off the other's centreline, and past its end where two ends both stop short. */
function near(mine: WallEnd, other: Wall): boolean {
  const { u, v } = seenFrom(other, mine.at);
  const past = Math.max(-u, u - wallLength(other));
  return Math.abs(v) <= reach(other) && past <= reach(mine.wall);
}

/** Where the centrelines of two walls cross, however far on; undefined where they are as good as parallel. */
function axisCrossing(p: Wall, q: Wall): Xy | undefined {
  const [d, e] = [unit(sub(p.b, p.a)), unit(sub(q.b, q.a))];
  const det = cross(d, e);
  if (Math.abs(det) < IN_LINE) return undefined;
  return add(p.a, scale(d, cross(sub(q.a, p.a), e) / det));
}

/** The end of `wall` beside which a crossing on its centreline lies, if it lies beside one. */
function endBeside(wall: Wall, at: Xy, other: Wall): End | undefined {
  const { u } = seenFrom(wall, at);
  const close = reach(other);
  const [toA, toB] = [Math.abs(u), Math.abs(u - wallLength(wall))];
  if (Math.min(toA, toB) > close) return undefined;
  return toA <= toB ? 'a' : 'b';
}

/** Two ends in line: facing each other, close, and not side by side. */
function lineJoint(mine: WallEnd, other: Wall): Joint | undefined {
  for (const end of ['a', 'b'] as const) {
    const theirs = wallEnd(other, end);
    if (dot(mine.out, theirs.out) > 0) continue;
    const gap = sub(theirs.at, mine.at);
    const apart = Math.abs(dot(gap, mine.out));
    const aside = Math.abs(cross(gap, mine.out));
    const half = Math.max(mine.wall.thicknessMm, other.thicknessMm) / 2;
    if (apart <= half + JOINT_MM && aside <= half) return { is: 'line', other: theirs };
  }
  return undefined;
}

function jointWith(mine: WallEnd, other: Wall): Joint | undefined {
  const at = axisCrossing(mine.wall, other);
  if (!at) return lineJoint(mine, other);
  const own = endBeside(mine.wall, at, other);
  const end = endBeside(other, at, mine.wall);
  if (own === mine.end && end !== undefined) {
    // A corner is one for both walls, whichever of the two was drawn up to the other.
    const theirs = wallEnd(other, end);
    if (near(mine, other) || near(theirs, mine.wall)) return { is: 'corner', other: theirs, at };
  }
  return near(mine, other) && end === undefined && onBody(other, at) ? { is: 'butt', other, at } : undefined;
}

function onBody(wall: Wall, p: Xy): boolean {
  const { u } = seenFrom(wall, p);
  return u >= 0 && u <= wallLength(wall);
}

/** How an end meets the other walls of its storey, in the order these are given. */
export function jointsOf(mine: WallEnd, walls: readonly Wall[]): Joint[] {
  return walls.flatMap((other) =>
    other === mine.wall || wallLength(other) === 0 ? [] : (jointWith(mine, other) ?? []),
  );
}
