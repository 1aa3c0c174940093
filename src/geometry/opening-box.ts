import type { Plan } from '../plan/plan.ts';
import type { Opening } from '../plan/records/building.ts';
import type { Xy, Xyz } from '../plan/records/parts.ts';
import { type Box3, boxOf } from './boxes.ts';
import { outOfWall, wallLength } from './wall-frame.ts';

/** An opening in space: a rectangle in the plane of its wall, through its whole thickness. */
export interface OpeningBox {
  readonly opening: string;
  readonly wall: string;
  /** Along the wall's centreline from its end `a`. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly bottomZ: number;
  readonly topZ: number;
  /** Corners in plan: near and far on the wall's left face, far and near on its right. */
  readonly footprint: readonly [Xy, Xy, Xy, Xy];
  readonly centre: Xyz;
  readonly box: Box3;
}

/** How far along the centreline from `a` an opening begins and ends. */
export function openingSpan(opening: Opening, lengthMm: number): readonly [fromMm: number, toMm: number] {
  const near = opening.from === 'a' ? opening.alongMm : lengthMm - opening.alongMm - opening.widthMm;
  return [near, near + opening.widthMm];
}

/** Undefined where the opening, its wall or the wall's storey is gone. */
export function openingBox(plan: Plan, openingId: string): OpeningBox | undefined {
  const opening = plan.openings[openingId];
  const wall = opening && plan.walls[opening.wall];
  const storey = wall && plan.storeys[wall.storey];
  if (!opening || !wall || !storey) return undefined;
  const [fromMm, toMm] = openingSpan(opening, wallLength(wall));
  const half = wall.thicknessMm / 2;
  const footprint = [
    outOfWall(wall, fromMm, half),
    outOfWall(wall, toMm, half),
    outOfWall(wall, toMm, -half),
    outOfWall(wall, fromMm, -half),
  ] as const;
  const [bottomZ, topZ] = [storey.floorMm + opening.sillMm, storey.floorMm + opening.headMm];
  const box = boxOf([...footprint.map((p) => ({ ...p, z: bottomZ })), { ...footprint[0], z: topZ }]);
  const centre = { ...outOfWall(wall, (fromMm + toMm) / 2, 0), z: (bottomZ + topZ) / 2 };
  return { opening: opening.id, wall: wall.id, fromMm, toMm, bottomZ, topZ, footprint, centre, box };
}
