import { hostedXy } from '../../geometry/hosting.ts';
import { add, dot, left, scale, sub, unit } from '../../geometry/vec.ts';
import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening, Void, Wall } from '../../plan/records/building.ts';
import type { HostedPlace, Xy } from '../../plan/records/parts.ts';
import type { Connection, Facing, Point } from '../../plan/records/pipework.ts';
import { quantise } from '../../plan/units.ts';

/** The line a choice is mirrored about: a place on it and the way it runs. */
export interface Mirror {
  /** A way on the other side. */
  way(v: Xy): Xy;
  place(p: Xy): Xy;
}

export function mirrorAbout(at: Xy, along: Xy): Mirror {
  const u = unit(along);
  const way = (v: Xy): Xy => sub(scale(u, 2 * dot(v, u)), v);
  return {
    way,
    place(p) {
      const { x, y } = add(at, way(sub(p, at)));
      return { x: quantise(x), y: quantise(y) };
    },
  };
}

/**
 * A wall with its ends changed over, so that its left face stays its left face: what is told of a side or hangs on it goes
 * with that face.
 */
export const mirroredWall = (wall: Wall, by: Mirror): Wall => ({
  ...wall,
  a: { ...wall.a, ...by.place(wall.b) },
  b: { ...wall.b, ...by.place(wall.a) },
});

const other = (end: 'a' | 'b'): 'a' | 'b' => (end === 'a' ? 'b' : 'a');

/** On a wall whose ends have changed over. */
export const mirroredOpening = (opening: Opening): Opening => ({
  ...opening,
  from: other(opening.from),
  hinge: opening.hinge && other(opening.hinge),
});

const degOf = (v: Xy): number => (Math.atan2(v.y, v.x) * 180) / Math.PI;
const FULL_TURN = 360;
const degrees = (deg: number): number => Math.round((((deg % FULL_TURN) + FULL_TURN) % FULL_TURN) * 1e6) / 1e6;

/** Joists run back along the mirrored way, so that they are counted from the same one. */
export function mirroredVoid(v: Void, by: Mirror): Void {
  const at = (p: Xy): Xy => ({ ...p, ...by.place(p) });
  const rad = ((v.joists?.wayDeg ?? 0) * Math.PI) / 180;
  const way = by.way({ x: Math.cos(rad), y: Math.sin(rad) });
  return {
    ...v,
    outline: v.outline.map(at).reverse(),
    holes: v.holes.map((hole) => hole.map(at).reverse()),
    bearings: v.bearings.map((b) => ({ ...b, a: at(b.a), b: at(b.b) })),
    joists: v.joists && { ...v.joists, wayDeg: degrees(degOf(scale(way, -1))), first: at(v.joists.first) },
  };
}

/** A place lies on a face, and faces its way, within these. */
const ON_FACE_MM = 1;
const SAME_WAY = 0.999;

/** The wall face of a storey that holds a place looking out that way. */
function hostAt(plan: Plan, storey: string, at: Xy, out: Xy, was: HostedPlace): HostedPlace | undefined {
  const on = sub(at, scale(out, was.standOffMm));
  for (const wall of Object.values(plan.walls)) {
    if (wall.storey !== storey) continue;
    const { u, v } = intoWall(wall, { ...on, z: 0 });
    const normal = left(unit(sub(wall.b, wall.a)));
    const facing = dot(out, normal);
    if (Math.abs(facing) < SAME_WAY || u < 0 || u > wallLength(wall)) continue;
    const side = facing > 0 ? 'left' : 'right';
    const face = ((side === 'left' ? 1 : -1) * wall.thicknessMm) / 2;
    if (Math.abs(v - face) <= ON_FACE_MM) return { ...was, wall: wall.id, side, from: 'a', alongMm: quantise(u) };
  }
  return undefined;
}

/**
 * Where a mirrored thing stands: it is not turned inside out, so it faces the mirrored way as it is made. `hosts`: walls
 * that went along, by the id they had; on another wall it keeps to whichever face is there, else it stands free.
 */
export function mirroredPlace(
  plan: Plan,
  after: Plan,
  point: Point,
  by: Mirror,
  hosts: ReadonlyMap<string, string>,
): Point['place'] {
  const { place } = point;
  if (place.on === 'storey') {
    const rad = (place.angleDeg * Math.PI) / 180;
    const out = by.way(scale(left({ x: Math.cos(rad), y: Math.sin(rad) }), -1));
    return { ...place, ...by.place(place), angleDeg: degrees(degOf(left(out))) };
  }
  const host = hosts.get(place.wall);
  if (host !== undefined) {
    return { ...place, wall: host as HostedPlace['wall'], from: other(place.from) };
  }
  const was = hostedXy(plan, place);
  if (!was) return place;
  const [at, out] = [by.place(was.at), by.way(was.out)];
  return (
    hostAt(after, point.storey, at, out, place) ?? {
      on: 'storey',
      ...at,
      angleDeg: degrees(degOf(left(out))),
      height: place.height,
    }
  );
}

const FACES: Readonly<Partial<Record<Facing, Facing>>> = { left: 'right', right: 'left' };
const facingOf = (facing: Facing): Facing => FACES[facing] ?? facing;
const SAME_MM = 1;

/** The tail of the same service that stands where a mirror shows this one: pipes are told to it. */
export function partnerOf(point: Point, tail: Connection): Connection | undefined {
  return point.connections.find(
    (c) =>
      c.service === tail.service &&
      Math.abs(c.at.x + tail.at.x) <= SAME_MM &&
      Math.abs(c.at.y - tail.at.y) <= SAME_MM &&
      Math.abs(c.at.z - tail.at.z) <= SAME_MM &&
      c.facing === facingOf(tail.facing),
  );
}

/** A tail as the mirror shows it, in the frame of its own point. */
export const shownTail = (tail: Connection): Connection => ({
  ...tail,
  at: { ...tail.at, x: -tail.at.x },
  facing: facingOf(tail.facing),
});
