import { openingBox } from '../../geometry/opening-box.ts';
import type { RoomFace } from '../../geometry/rooms.ts';
import { outOfWall } from '../../geometry/wall-frame.ts';
import type { Opening, Room } from '../../plan/records/building.ts';
import type { Given } from '../given.ts';
import { openingsOf } from './obstacles.ts';
import { isBathroom, isCupboard } from './room-kinds.ts';
import { faceOf, roomOf, type Sited } from './sited.ts';
import { wallsRound } from './walls-round.ts';

/** Just past a face of a wall: in the room and not on its edge. */
const PAST_MM = 20;

/** A way out of a closed space and the space beyond it; null where that is outside. */
export interface Way {
  readonly opening: Opening;
  readonly beyond: RoomFace | null;
}

/** Doors, archways and vents in the walls round a space. */
export function waysOf(given: Given, storey: string, face: RoomFace): Way[] {
  return wallsRound(given, storey, face).flatMap((wall) =>
    openingsOf(given, wall.id).flatMap((opening): Way[] => {
      const box = openingBox(given.plan, opening.id);
      if (!box || opening.kind === 'window') return [];
      const middle = (box.fromMm + box.toMm) / 2;
      const off = wall.thicknessMm / 2 + PAST_MM;
      const [left, right] = [off, -off].map((v) => faceOf(given, storey, outOfWall(wall, middle, v)));
      if (left !== face && right !== face) return [];
      return [{ opening, beyond: (left === face ? right : left) ?? null }];
    }),
  );
}

export interface InBathroom {
  readonly room: Room;
  readonly cupboard: boolean;
}

/** The bathroom a boiler stands in, or that its cupboard opens or vents into. */
export function bathroomOf(given: Given, { point, face, room }: Sited): InBathroom | null {
  if (!face || !room) return null;
  if (isBathroom(room)) return { room, cupboard: false };
  if (!isCupboard(room)) return null;
  for (const { beyond } of waysOf(given, point.storey, face)) {
    const next = roomOf(given, beyond);
    if (next && isBathroom(next)) return { room: next, cupboard: true };
  }
  return null;
}
