import type { Wall } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';
import { type Outline, signedArea } from './outlines.ts';
import { add, cross, distance, dot, left, scale, sub } from './vec.ts';
import { type Joint, jointsOf, type WallEnd, wallEnd } from './wall-joints.ts';

/** A line that cuts what lies on its left away. */
interface Cut {
  readonly on: Xy;
  readonly way: Xy;
}

/** Sharper corners than this many half-thicknesses are left blunt, as a mason would leave them. */
const SHARP = 4;
/** Corners nearer than this are one. */
const HAIR_MM = 1e-6;

const anticlockwise = (outline: Outline): Outline => (signedArea(outline) < 0 ? [...outline].reverse() : outline);

/** What is left of a convex outline on the right of a line. */
function cutBy(outline: Outline, { on, way }: Cut): Xy[] {
  const off = (p: Xy) => cross(way, sub(p, on));
  const kept = outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p;
    const [s, t] = [off(p), off(q)];
    const meets = s > 0 !== t > 0 && s !== t ? [add(p, scale(sub(q, p), s / (s - t)))] : [];
    return s <= 0 ? [p, ...meets] : meets;
  });
  // A cut through a corner gives that corner twice.
  return kept.filter((p, i) => distance(p, kept[(i + 1) % kept.length] ?? p) > HAIR_MM || kept.length === 1);
}

/** The convex outline round some places, anticlockwise. */
export function hull(places: readonly Xy[]): Xy[] {
  const sorted = [...places].sort((p, q) => p.x - q.x || p.y - q.y);
  const half = (of: readonly Xy[]) => {
    const chain: Xy[] = [];
    for (const p of of) {
      for (;;) {
        const [q, r] = [chain[chain.length - 1], chain[chain.length - 2]];
        if (!q || !r || cross(sub(q, r), sub(p, r)) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** How an end is finished: how far its body goes past the drawn end, what is cut off it, what is put beside it. */
interface Finish {
  readonly extraMm: number;
  readonly cuts: readonly Cut[];
  readonly patches: readonly Outline[];
}

const half = (wall: Wall): number => wall.thicknessMm / 2;

/** The two corners of a square end at a place on its centreline. */
const square = (end: WallEnd, at: Xy): Xy[] =>
  [1, -1].map((side) => add(at, scale(left(end.out), side * half(end.wall))));

/** A line through `on` that cuts off what lies further out than it, seen from the wall. */
function outwards(end: WallEnd, on: Xy, way: Xy): Cut {
  // The middle of the wall must stay: it lies against `out`.
  return cross(way, scale(end.out, -1)) > 0 ? { on, way: scale(way, -1) } : { on, way };
}

function butt(end: WallEnd, other: Wall, at: Xy): Finish {
  const way = sub(other.b, other.a);
  const sin = Math.abs(cross(end.out, way)) / Math.hypot(way.x, way.y);
  const cos = Math.sqrt(Math.max(0, 1 - sin * sin));
  const extraMm = Math.max(0, dot(sub(at, end.at), end.out) + (half(end.wall) * cos) / sin);
  return { extraMm, cuts: [outwards(end, at, way)], patches: [] };
}

/** Mitre of two walls: through the crossing of their centrelines and the crossing of their outer faces. */
function mitre(end: WallEnd, other: WallEnd, at: Xy): Finish {
  const [n, m] = [left(end.out), scale(left(other.out), -1)];
  // Faces on the outside of the bend are those that point with the other wall's way out.
  const side = dot(n, other.out) > 0 ? 1 : -1;
  const [p, q] = [scale(n, side * half(end.wall)), scale(m, side * half(other.wall))];
  const det = cross(end.out, other.out);
  const outer = add(p, scale(end.out, cross(sub(q, p), other.out) / det));
  if (Math.hypot(outer.x, outer.y) > SHARP * Math.max(half(end.wall), half(other.wall))) return blunt(end, [other], at);
  const past = Math.abs(dot(outer, end.out));
  return { extraMm: Math.max(0, dot(sub(at, end.at), end.out) + past), cuts: [outwards(end, at, outer)], patches: [] };
}

/** Several ends at one place: each goes square up to it, and what is between them is filled. */
function blunt(end: WallEnd, others: readonly WallEnd[], at: Xy): Finish {
  const extraMm = dot(sub(at, end.at), end.out);
  const patch = hull([end, ...others].flatMap((e) => square(e, at)));
  return { extraMm, cuts: [outwards(end, at, left(end.out))], patches: patch.length > 2 ? [patch] : [] };
}

function inLine(end: WallEnd, others: readonly WallEnd[]): Finish {
  const patches = others.map((o) => hull([...square(end, end.at), ...square(o, o.at)])).filter((p) => p.length > 2);
  return { extraMm: 0, cuts: [], patches };
}

function finish(end: WallEnd, joints: readonly Joint[]): Finish {
  const butts = joints.flatMap((j) => (j.is === 'butt' ? [j] : []));
  const corners = joints.flatMap((j) => (j.is === 'corner' ? [j] : []));
  const lines = joints.flatMap((j) => (j.is === 'line' ? [j.other] : []));
  const [first] = butts;
  if (first) return butt(end, first.other, first.at);
  const [corner, ...more] = corners;
  if (!corner) return inLine(end, lines);
  if (more.length === 0 && lines.length === 0) return mitre(end, corner.other, corner.at);
  const others = [...corners.map((c) => c.other), ...lines];
  return blunt(end, others, corner.at);
}

export interface WallOutline {
  readonly wall: Wall;
  /** Convex, anticlockwise; empty for a wall of no length. */
  readonly outline: Outline;
  /** Small fillings where several walls end together; they belong to no wall. */
  readonly patches: readonly Outline[];
}

/** The body of a wall among the walls of its storey: joined where an end comes near enough to another wall. */
export function wallOutline(wall: Wall, walls: readonly Wall[]): WallOutline {
  if (wall.a.x === wall.b.x && wall.a.y === wall.b.y) return { wall, outline: [], patches: [] };
  const ends = (['a', 'b'] as const).map((which) => wallEnd(wall, which));
  const finished = ends.map((end) => ({ end, ...finish(end, jointsOf(end, walls)) }));
  const corners = finished.flatMap(({ end, extraMm }) =>
    square(end, add(end.at, scale(end.out, Math.max(0, extraMm)))),
  );
  const cuts = finished.flatMap((f) => f.cuts);
  const outline = cuts.reduce<Outline>((left_, cut) => cutBy(left_, cut), anticlockwise(corners));
  return { wall, outline: anticlockwise(outline), patches: finished.flatMap((f) => f.patches) };
}
