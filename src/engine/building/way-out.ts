import { boxOf } from '../../geometry/boxes.ts';
import { clipToArea } from '../../geometry/outlines.ts';
import { type RoomFace, roomFaces } from '../../geometry/rooms.ts';
import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Room } from '../../plan/records/building.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Pipe } from '../clearance/pipes.ts';
import type { Given } from '../given.ts';

/** A part of a pipe in a room, or in the floor below it or the ceiling above it. */
export interface InRoom {
  readonly room: Room;
  readonly face: RoomFace;
  readonly pipe: Pipe;
  readonly lengthMm: number;
}

/** From the underside of its floor to the floor above: what lies over and under a room burns with it. */
function reach(plan: Plan, room: Room): { bottom: number; top: number } | null {
  const storey = plan.storeys[room.storey];
  if (!storey) return null;
  const floors = Object.values(plan.storeys).map((s) => s.floorMm);
  const above = floors.filter((z) => z > storey.floorMm);
  const ceiling = storey.floorMm + storey.ceilingMm;
  return {
    bottom: storey.floorMm - storey.buildUpMm,
    top: above.length > 0 ? Math.min(...above) : ceiling + storey.buildUpMm,
  };
}

function lengthIn(pipe: Pipe, face: RoomFace, span: { bottom: number; top: number }): number {
  const { a, b } = pipe.body;
  const z = (a.z + b.z) / 2;
  const lengthMm = Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);
  if (z < span.bottom || z > span.top) return 0;
  return clipToArea(a, b, face.outline, face.holes).reduce((sum, [s, t]) => sum + (t - s) * lengthMm, 0);
}

/** New gas pipe in, over or under the rooms asked for, in the order of rooms and legs. */
export function gasInRooms(given: Given, asked: (room: Room, face: RoomFace) => boolean): InRoom[] {
  const { plan } = given;
  const standing = standingBuilding(given.network);
  const isGas = (p: Pipe): boolean => p.edge.service === 'gas' && p.edge.state === 'new';
  if (!given.pipes.some(isGas)) return [];
  return Object.keys(plan.storeys).flatMap((storey) =>
    roomFaces(plan, storey, standing).faces.flatMap((face) =>
      face.rooms.flatMap((id) => {
        const room = plan.rooms[id];
        const span = room && reach(plan, room);
        if (!room || !span || !asked(room, face)) return [];
        const flat = boxOf(face.outline.map((p) => ({ ...p, z: span.bottom })));
        const near = given.pipeIndex.search({ ...flat, maxZ: span.top }).filter(isGas);
        return near.flatMap((pipe): InRoom[] => {
          const lengthMm = lengthIn(pipe, face, span);
          return lengthMm > 0 ? [{ room, face, pipe, lengthMm }] : [];
        });
      }),
    ),
  );
}

/** Rooms that people go through to get out, by what they are called. */
const PASSAGE = /\b(hall|hallway|landing|stairs?|staircase|corridor|passage|lobby)\b/i;
export const isPassage = (room: Room): boolean => PASSAGE.test(`${room.name} ${room.use}`);

/** Does a wall that is shared or holds back fire stand round it? Then other dwellings may lie beyond. */
export function besideOthers(given: Given, room: Room, face: RoomFace): boolean {
  return Object.values(given.plan.walls).some((wall) => {
    if (wall.storey !== room.storey || !(wall.party === true || wall.fire === true)) return false;
    if (!given.network.alive.has('walls', wall.id)) return false;
    return face.outline.some((p) => {
      const { u, v } = intoWall(wall, { ...p, z: 0 });
      return Math.abs(v) <= wall.thicknessMm / 2 + 1 && u >= -1 && u <= wallLength(wall) + 1;
    });
  });
}
