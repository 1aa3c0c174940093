import { add, cross, distance, dot, left, scale, sub, unit } from '../../geometry/vec.ts';
import { JOINT_MM } from '../../geometry/wall-joints.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';

/** Four corners of a room's inside, in order; a right-angled box. */
export type Box = readonly [Xy, Xy, Xy, Xy];

export interface BoxWalls {
  /** Walls to be drawn, by their middle lines. */
  readonly walls: readonly { readonly a: Xy; readonly b: Xy }[];
  /** Walls that stand there already and close the room with them. */
  readonly standing: readonly string[];
  /** How far a standing wall's face is from where the box has it, at the most. */
  readonly offMm: number;
}

/** Cosine from which on two walls go the same way. */
const PARALLEL = 0.9995;

interface Side {
  /** Corners of the inside, walked with the room on the left. */
  readonly a: Xy;
  readonly b: Xy;
  readonly along: Xy;
  readonly out: Xy;
}

const half = (w: Wall): number => w.thicknessMm / 2;

function sidesOf(box: Box): Side[] {
  const turns = cross(sub(box[1], box[0]), sub(box[2], box[1])) < 0;
  const [p, q, r, s] = turns ? ([box[0], box[3], box[2], box[1]] as const) : box;
  return (
    [
      [p, q],
      [q, r],
      [r, s],
      [s, p],
    ] as const
  ).map(([a, b]) => {
    const along = unit(sub(b, a));
    return { a, b, along, out: scale(left(along), -1) };
  });
}

/** A wall that stands where a side would be drawn, and what of the side it covers. */
interface Covered {
  readonly wall: Wall;
  readonly from: number;
  readonly upTo: number;
  /** Its middle line, outwards from the inside. */
  readonly outMm: number;
}

function covering(side: Side, walls: readonly Wall[], thicknessMm: number): Covered[] {
  const lengthMm = distance(side.a, side.b);
  return walls.flatMap((wall): Covered[] => {
    const way = unit(sub(wall.b, wall.a));
    if (Math.abs(dot(way, side.along)) < PARALLEL) return [];
    const outMm = dot(sub(scale(add(wall.a, wall.b), 0.5), side.a), side.out);
    // The room reaches into it, or the middle line of the new wall would run in it.
    if (outMm - half(wall) > thicknessMm / 2 || outMm + half(wall) < 0) return [];
    const ends = [wall.a, wall.b].map((p) => dot(sub(p, side.a), side.along));
    const [from, upTo] = [Math.min(...ends), Math.max(...ends)];
    return upTo <= 0 || from >= lengthMm ? [] : [{ wall, from, upTo, outMm }];
  });
}

/** Where two lines cross, each given by a place and a way. */
function crossing(a: Xy, along: Xy, b: Xy, way: Xy): Xy {
  const det = cross(along, way);
  return det === 0 ? b : add(a, scale(along, cross(sub(b, a), way) / det));
}

/** Middle line of a side: of the wall that covers most of it, else half a thickness out. */
function middleOut(found: readonly Covered[], thicknessMm: number): number {
  const most = [...found].sort((p, q) => q.upTo - q.from - (p.upTo - p.from) || (p.wall.id < q.wall.id ? -1 : 1))[0];
  return most ? most.outMm : thicknessMm / 2;
}

/**
 * The walls round a box of inside faces: what stands there already is left standing, and only what is missing of each side
 * is drawn, joined to it.
 */
export function boxWalls(box: Box, walls: readonly Wall[], thicknessMm: number): BoxWalls {
  const sides = sidesOf(box).map((side) => {
    const found = covering(side, walls, thicknessMm);
    const outMm = middleOut(found, thicknessMm);
    return { ...side, found, on: add(side.a, scale(side.out, outMm)) };
  });
  const made: { a: Xy; b: Xy }[] = [];
  const standing = new Set<string>();
  let offMm = 0;
  for (const [i, side] of sides.entries()) {
    const [before, after] = [sides[(i + 3) % 4] ?? side, sides[(i + 1) % 4] ?? side];
    const start = crossing(side.on, side.along, before.on, before.along);
    const end = crossing(side.on, side.along, after.on, after.along);
    const lengthMm = distance(start, end);
    const shift = dot(sub(side.a, start), side.along);
    let at = 0;
    for (const c of [...side.found].sort((p, q) => p.from - q.from)) {
      standing.add(c.wall.id);
      offMm = Math.max(offMm, Math.abs(c.outMm - half(c.wall)));
      const from = c.from + shift;
      if (from - at > joins(c.wall, thicknessMm)) made.push(part(start, side.along, at, from));
      at = Math.max(at, c.upTo + shift);
    }
    const last = side.found.length === 0 ? 0 : thicknessMm / 2 + JOINT_MM;
    if (lengthMm - at > last) made.push(part(start, side.along, at, lengthMm));
  }
  return { walls: made, standing: [...standing].sort(), offMm };
}

/** A gap in line up to this long is closed by the ends beside it. */
const joins = (wall: Wall, thicknessMm: number): number => Math.max(wall.thicknessMm, thicknessMm) / 2 + JOINT_MM;

const part = (start: Xy, along: Xy, from: number, to: number): { a: Xy; b: Xy } => ({
  a: add(start, scale(along, from)),
  b: add(start, scale(along, to)),
});

export interface OutOfWalls {
  readonly at: Xy;
  /** Square to each wall whose body the place was in or at. */
  readonly held: readonly Xy[];
}

/** A corner that was put into a wall's body is meant at its face, on the side of the room. `towards`: into the room. */
export function outOfWalls(p: Xy, towards: Xy, walls: readonly Wall[]): OutOfWalls {
  let at = p;
  const held: Xy[] = [];
  for (const wall of walls) {
    const along = unit(sub(wall.b, wall.a));
    const n = left(along);
    const into = dot(towards, n);
    const l = distance(wall.a, wall.b);
    const [s, off] = [dot(sub(p, wall.a), along), dot(sub(p, wall.a), n)];
    const within = Math.abs(off) <= half(wall) + 1 && s >= -half(wall) - 1 && s <= l + half(wall) + 1;
    if (!within || Math.abs(into) < 0.1) continue;
    held.push(n);
    at = add(at, scale(n, Math.sign(into) * half(wall) - dot(sub(at, wall.a), n)));
  }
  return { at, held };
}
