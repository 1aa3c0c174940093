import type { Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import type { Xy, Xyz } from '../plan/records/parts.ts';
import { ceilingZ, floorZ } from './heights.ts';
import { wallSide } from './hosting.ts';
import { type Part, shared } from './outlines.ts';
import { type RoomFace, roomFaces } from './rooms.ts';
import { add, dot, scale, sub } from './vec.ts';
import type { Standing } from './wall-frame.ts';

export type Side = 'left' | 'right';

/** A place as one sees it standing before a wall: s to the right hand, z above the datum, depth out of the face. */
export interface OnFace {
  readonly s: number;
  readonly z: number;
  readonly depth: number;
}

/** One side of a wall as a sheet one looks at. s is 0 at the wall's end to the viewer's left. */
export interface FacePlane {
  readonly wall: string;
  readonly side: Side;
  readonly lengthMm: number;
  /** Which named end of the wall is at the viewer's left. */
  readonly leftEnd: 'a' | 'b';
  readonly origin: Xy;
  /** Unit vectors in plan: to the viewer's right, and out of the face towards the viewer. */
  readonly right: Xy;
  readonly out: Xy;
  toFace(p: Xyz): OnFace;
  toHouse(p: OnFace): Xyz;
}

export function facePlane(wall: Wall, side: Side): FacePlane {
  const { start, along, out, lengthMm } = wallSide(wall, side);
  // Facing the left side one looks against its left normal, and the way from a to b goes to the left hand.
  const leftEnd = side === 'left' ? 'b' : 'a';
  const origin = side === 'left' ? add(start, scale(along, lengthMm)) : start;
  const right = side === 'left' ? scale(along, -1) : along;
  return {
    wall: wall.id,
    side,
    lengthMm,
    leftEnd,
    origin,
    right,
    out,
    toFace(p) {
      const d = sub(p, origin);
      return { s: dot(d, right), z: p.z, depth: dot(d, out) };
    },
    toHouse(p) {
      return { ...add(add(origin, scale(right, p.s)), scale(out, p.depth)), z: p.z };
    },
  };
}

/** A stretch of a face that belongs to one closed space. */
export interface FaceStretch {
  readonly fromS: number;
  readonly toS: number;
  /** Rooms whose seed lies in that space; empty where nobody has named it, and for a face to the outside. */
  readonly rooms: readonly string[];
  readonly floorZ: number;
  readonly ceilingZ: number;
}

/** Edges of rooms lie on the face but for the rounding of bodies. */
const ON_FACE_MM = 0.5;

/** Parts of the face's line along which the edge of a space runs. */
function touching(face: FacePlane, space: RoomFace): Part[] {
  return [space.outline, ...space.holes].flatMap((outline) =>
    outline.flatMap((p, i) => {
      const q = outline[(i + 1) % outline.length] ?? p;
      const [m, n] = [face.toFace({ ...p, z: 0 }), face.toFace({ ...q, z: 0 })];
      if (Math.abs(m.depth) > ON_FACE_MM || Math.abs(n.depth) > ON_FACE_MM) return [];
      const part = shared([Math.min(m.s, n.s), Math.max(m.s, n.s)], [0, face.lengthMm]);
      return part && part[1] - part[0] > ON_FACE_MM ? [part] : [];
    }),
  );
}

/**
 * What bounds a face, from the viewer's left to right: the spaces that touch it, each with its floor and ceiling. A
 * room's own heights go before the storey's. Empty where no closed space touches it (an outside face, an open plan).
 */
export function faceStretches(plan: Plan, wall: Wall, side: Side, standing?: Standing): FaceStretch[] {
  const face = facePlane(wall, side);
  return roomFaces(plan, wall.storey, standing)
    .faces.flatMap((space) => {
      const of = space.rooms[0] ?? wall.storey;
      const [floor, ceiling] = [floorZ(plan, of), ceilingZ(plan, of)];
      if (floor === undefined || ceiling === undefined) return [];
      return touching(face, space).map(([fromS, toS]) => ({
        fromS,
        toS,
        rooms: space.rooms,
        floorZ: floor,
        ceilingZ: ceiling,
      }));
    })
    .sort((p, q) => p.fromS - q.fromS);
}
