import { facePlane, type Side } from '../../geometry/face-plane.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void, Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';

/** A box against a side of a wall, or a chase let into it: mm across the face as it is seen, and out of it or into it. */
export interface BoxOnWall {
  readonly wall: string;
  readonly side: Side;
  readonly fromS: number;
  readonly toS: number;
  readonly depthMm: number;
  readonly into: boolean;
}

/** Rounding of outlines to tenths, on a wall that lies askew. */
const ON_FACE_MM = 1;
const CORNERS = 4;
const SIDES = ['left', 'right'] as const;

function against(wall: Wall, side: Side, v: Void): BoxOnWall | undefined {
  const face = facePlane(wall, side);
  const at = v.outline.map((p) => face.toFace({ ...p, z: 0 }));
  const [s, depth] = [at.map((p) => p.s), at.map((p) => p.depth)];
  const [fromS, toS] = [Math.min(...s), Math.max(...s)];
  const [near, far] = [Math.min(...depth), Math.max(...depth)];
  if (toS < 0 || fromS > face.lengthMm) return undefined;
  const atCorner = at.every(
    (p) =>
      Math.min(Math.abs(p.s - fromS), Math.abs(p.s - toS)) <= ON_FACE_MM &&
      Math.min(Math.abs(p.depth - near), Math.abs(p.depth - far)) <= ON_FACE_MM,
  );
  if (!atCorner) return undefined;
  const on = { wall: wall.id, side, fromS, toS, depthMm: far - near };
  if (v.kind === 'boxing' && Math.abs(near) <= ON_FACE_MM) return { ...on, into: false };
  if (v.kind === 'chase' && Math.abs(far) <= ON_FACE_MM) return { ...on, into: true };
  return undefined;
}

/** Where a boxing or chase of four square corners lies on a wall's side; undefined for any other void. */
export function boxOnWall(plan: Plan, v: Void): BoxOnWall | undefined {
  if ((v.kind !== 'boxing' && v.kind !== 'chase') || v.outline.length !== CORNERS) return undefined;
  const found = Object.values(plan.walls)
    .filter((w) => w.storey === v.storey)
    .flatMap((w) => SIDES.flatMap((side) => against(w, side, v) ?? []));
  // In a corner a box stands against two walls: it belongs to the one it is wider along.
  return found.sort((a, b) => b.toS - b.fromS - (a.toS - a.fromS) || (a.wall < b.wall ? -1 : 1))[0];
}

/** As `boxOnWall`, on one side of one wall. */
export function boxOnSide(wall: Wall, side: Side, v: Void): BoxOnWall | undefined {
  if (v.storey !== wall.storey || v.outline.length !== CORNERS) return undefined;
  return against(wall, side, v);
}

/** The outline in plan of a box on a wall's side. */
export function outlineOnWall(wall: Wall, box: Omit<BoxOnWall, 'wall'>): Xy[] {
  const face = facePlane(wall, box.side);
  const depth = box.into ? -box.depthMm : box.depthMm;
  const corner = (s: number, d: number): Xy => {
    const { x, y } = face.toHouse({ s, z: 0, depth: d });
    return { x, y };
  };
  return [corner(box.fromS, 0), corner(box.toS, 0), corner(box.toS, depth), corner(box.fromS, depth)];
}
