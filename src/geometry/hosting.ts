import type { Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import type { HostedPlace, Xy, Xyz } from '../plan/records/parts.ts';
import type { Facing, Point } from '../plan/records/pipework.ts';
import { type Doubt, resolveHeight } from './heights.ts';
import { add, direction, left, scale, sub, unit } from './vec.ts';

/** A point's own frame: x to the right as one faces it, y out towards the reader, z up, from its origin. */
export interface Frame {
  readonly origin: Xyz;
  readonly right: Xy;
  readonly out: Xy;
  readonly zLo: number;
  readonly zHi: number;
  readonly doubts: ReadonlyMap<string, Doubt>;
}

/** The face of one side of a wall: along runs from a to b, out leaves the wall. */
export interface WallSide {
  readonly start: Xy;
  readonly along: Xy;
  readonly out: Xy;
  readonly lengthMm: number;
}

/** Face line of a wall's side, start beside `a`, before any joint with other walls. */
export function wallSide(wall: Wall, side: 'left' | 'right'): WallSide {
  const d = sub(wall.b, wall.a);
  const along = unit(d);
  const out = side === 'left' ? left(along) : scale(left(along), -1);
  return { start: add(wall.a, scale(out, wall.thicknessMm / 2)), along, out, lengthMm: Math.hypot(d.x, d.y) };
}

/** Plan place of something on a wall: undefined where the wall is gone. */
export function hostedXy(plan: Plan, place: HostedPlace): { at: Xy; right: Xy; out: Xy } | undefined {
  const wall = plan.walls[place.wall];
  if (!wall) return undefined;
  const face = wallSide(wall, place.side);
  const s = place.from === 'a' ? place.alongMm : face.lengthMm - place.alongMm;
  const at = add(add(face.start, scale(face.along, s)), scale(face.out, place.standOffMm));
  // Facing the wall's left side one looks against its left normal, and `a` to `b` runs to the left hand.
  return { at, right: place.side === 'left' ? scale(face.along, -1) : face.along, out: face.out };
}

export function pointFrame(plan: Plan, point: Point, depth = 0): Frame | undefined {
  const h = resolveHeight(plan, point.place.height, depth, `point ${point.id}`);
  if (!h) return undefined;
  const { lo: zLo, hi: zHi, doubts } = h;
  if (point.place.on === 'wall') {
    const host = hostedXy(plan, point.place);
    return host && { origin: { ...host.at, z: h.z }, right: host.right, out: host.out, zLo, zHi, doubts };
  }
  const right = direction(point.place.angleDeg);
  return {
    origin: { x: point.place.x, y: point.place.y, z: h.z },
    right,
    out: scale(left(right), -1),
    zLo,
    zHi,
    doubts,
  };
}

/** A place given in a point's own frame, in the house. */
export function toHouse(frame: Frame, local: Xyz): Xyz {
  return {
    x: frame.origin.x + frame.right.x * local.x + frame.out.x * local.y,
    y: frame.origin.y + frame.right.y * local.x + frame.out.y * local.y,
    z: frame.origin.z + local.z,
  };
}

const FACINGS: Readonly<Record<Facing, readonly [number, number, number]>> = {
  right: [1, 0, 0],
  left: [-1, 0, 0],
  front: [0, 1, 0],
  back: [0, -1, 0],
  up: [0, 0, 1],
  down: [0, 0, -1],
};

export interface ConnectionPlace {
  readonly at: Xyz;
  /** Unit vector the pipe leaves along. */
  readonly facing: Xyz;
  readonly zLo: number;
  readonly zHi: number;
  readonly doubts: ReadonlyMap<string, Doubt>;
}

/** Where a connection is and which way it faces; undefined where the point, the connection or its host is gone. */
export function connectionPlace(plan: Plan, point: string, connection: string, depth = 0): ConnectionPlace | undefined {
  const p = plan.points[point];
  const c = p?.connections.find((x) => x.id === connection);
  const frame = p && pointFrame(plan, p, depth);
  if (!c || !frame) return undefined;
  const [x, y, z] = FACINGS[c.facing];
  const tip = toHouse({ ...frame, origin: { x: 0, y: 0, z: 0 } }, { x, y, z });
  return {
    at: toHouse(frame, c.at),
    facing: tip,
    zLo: frame.zLo + c.at.z,
    zHi: frame.zHi + c.at.z,
    doubts: frame.doubts,
  };
}
