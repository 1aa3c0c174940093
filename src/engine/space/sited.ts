import { toHouse } from '../../geometry/hosting.ts';
import { type PointBox, pointBox } from '../../geometry/point-box.ts';
import { faceAt, type RoomFace, roomFaces } from '../../geometry/rooms.ts';
import type { Room } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';

/** A point with its body and the closed space that its middle lies in; null where it lies in none. */
export interface Sited {
  readonly point: Point;
  readonly body: PointBox;
  readonly middle: Xy;
  readonly face: RoomFace | null;
  /** What was told of that space; null where nothing was, or two rooms were told of one space. */
  readonly room: Room | null;
}

const faces = new WeakMap<Given, Map<string, readonly RoomFace[]>>();

/** Closed spaces of a storey in the case, worked out once. */
export function facesOf(given: Given, storey: string): readonly RoomFace[] {
  const kept = faces.get(given) ?? new Map<string, readonly RoomFace[]>();
  faces.set(given, kept);
  const known = kept.get(storey);
  if (known) return known;
  const made = roomFaces(given.plan, storey, standingBuilding(given.network)).faces;
  kept.set(storey, made);
  return made;
}

export const faceOf = (given: Given, storey: string, p: Xy): RoomFace | null =>
  faceAt(facesOf(given, storey), p) ?? null;

export const roomOf = (given: Given, face: RoomFace | null): Room | null =>
  face?.rooms.length === 1 ? (given.plan.rooms[face.rooms[0] ?? ''] ?? null) : null;

/** Undefined where the point has no place. */
export function site(given: Given, point: Point): Sited | undefined {
  const body = pointBox(given.plan, point);
  if (!body) return undefined;
  const middle = toHouse(body.frame, { x: 0, y: point.size.depthMm / 2, z: 0 });
  const face = faceOf(given, point.storey, middle);
  return { point, body, middle, face, room: roomOf(given, face) };
}

/** By the closed space they stand in; those in none are together. */
export function byFace(all: readonly Sited[]): ReadonlyMap<RoomFace | null, readonly Sited[]> {
  const made = new Map<RoomFace | null, Sited[]>();
  for (const sited of all) {
    const row = made.get(sited.face);
    if (row) row.push(sited);
    else made.set(sited.face, [sited]);
  }
  return made;
}

const byKind = new WeakMap<Given, ReadonlyMap<string, readonly Point[]>>();

/** Standing points of a kind, in the order of the plan. */
export function standing(given: Given, kind: string): readonly Point[] {
  let found = byKind.get(given);
  if (!found) {
    const made = new Map<string, Point[]>();
    for (const point of Object.values(given.plan.points)) {
      if (!given.network.alive.has('points', point.id)) continue;
      const row = made.get(point.kind);
      if (row) row.push(point);
      else made.set(point.kind, [point]);
    }
    byKind.set(given, made);
    found = made;
  }
  return found.get(kind) ?? [];
}

export const isNewPoint = (given: Given, point: Point): boolean => given.network.alive.state(point.id) === 'new';

const boilers = new WeakMap<Given, readonly Sited[]>();

/** Boilers that the option sets, where they have a place. */
export function newBoilers(given: Given): readonly Sited[] {
  const known = boilers.get(given);
  if (known) return known;
  const made = standing(given, 'boiler').filter((p) => isNewPoint(given, p));
  const found = made.flatMap((p) => site(given, p) ?? []);
  boilers.set(given, found);
  return found;
}
