import { roomFaces } from '../../geometry/rooms.ts';
import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';

/** Corners of a room lie on its walls but for the rounding of bodies. */
const ON_WALL_MM = 1;

function isOn(wall: Wall, p: Xy): boolean {
  const { u, v } = intoWall(wall, { ...p, z: 0 });
  const reach = wall.thicknessMm / 2 + ON_WALL_MM;
  return Math.abs(v) <= reach && u >= -reach && u <= wallLength(wall) + reach;
}

/** Rooms that stand between these walls and no others: they go where the walls go. */
export function roomsWithin(plan: Plan, walls: readonly Wall[]): string[] {
  const storeys = new Set(walls.map((w) => w.storey as string));
  return [...storeys].flatMap((storey) =>
    roomFaces(plan, storey)
      .faces.filter((f) => f.outline.every((p) => walls.some((w) => w.storey === storey && isOn(w, p))))
      .flatMap((f) => f.rooms),
  );
}
