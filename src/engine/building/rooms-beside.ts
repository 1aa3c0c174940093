import { faceAt, roomFaces } from '../../geometry/rooms.ts';
import { left, sub, unit } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Room, Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { midSentence } from '../say-names.ts';

/** Off the face by a hair: a place in the room and not on its edge. */
const OFF_MM = 10 * COINCIDENT_MM;

/** Rooms told of at a place of a storey. */
export function roomsAt(given: Given, storey: string, p: Xy): Room[] {
  const face = faceAt(roomFaces(given.plan, storey, standingBuilding(given.network)).faces, p);
  return (face?.rooms ?? []).flatMap((id) => given.plan.rooms[id] ?? []);
}

/** Rooms on both sides of a wall where something crosses it. */
export function roomsBeside(given: Given, wall: Wall, at: Xy): Room[] {
  const side = left(unit(sub(wall.b, wall.a)));
  const d = sub(at, wall.a);
  const v = d.x * side.x + d.y * side.y;
  return [1, -1].flatMap((way) => {
    const off = way * (wall.thicknessMm / 2 + OFF_MM) - v;
    return roomsAt(given, wall.storey, { x: at.x + side.x * off, y: at.y + side.y * off });
  });
}

/** Is anything in this house told to be a protected way out? */
export const hasEscapeRoute = (plan: Plan): boolean => Object.values(plan.rooms).some((r) => r.escapeRoute === true);

export const sayRoom = (room: Room): string =>
  room.name !== '' ? midSentence(room.name) : room.use !== '' ? midSentence(room.use) : 'room';
