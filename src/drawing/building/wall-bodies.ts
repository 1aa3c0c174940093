import { bodiesOf } from '../../geometry/bodies.ts';
import { openingSpan } from '../../geometry/opening-box.ts';
import { difference, type MultiPolygon, polygonOf } from '../../geometry/polygons.ts';
import { outOfWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';

/** Walls of a storey as they are cut in plan: gaps where openings are, one body where walls meet. */
export interface CutWalls {
  /** Outlines of everything, seen or assumed: the cut edge. */
  readonly edges: readonly (readonly Vec[])[];
  /** What is filled: walls somebody has seen. */
  readonly seen: readonly (readonly Vec[])[];
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): T[] =>
  [...records].sort((p, q) => (p.id < q.id ? -1 : 1));

/** Corners of a stretch of a wall's body from face to face: near and far on its left, far and near on its right. */
export function bodyPart(wall: Wall, from: number, upTo: number, over = 0): Vec[] {
  const half = wall.thicknessMm / 2 + over;
  return [
    outOfWall(wall, from, half),
    outOfWall(wall, upTo, half),
    outOfWall(wall, upTo, -half),
    outOfWall(wall, from, -half),
  ].map((p): Vec => [p.x, p.y]);
}

const ringsOf = (solid: MultiPolygon): Vec[][] =>
  solid.flatMap((polygon) => polygon.map((ring) => ring.slice(0, -1).map(([x, y]): Vec => [x, y])));

/** A hair past both faces, so that no film is left where an opening is cut out. */
const OVER_MM = 1;

export function cutWalls(walls: readonly Wall[], openings: readonly Opening[]): CutWalls {
  const standing = new Map(walls.map((w) => [w.id as string, w]));
  const gaps = openings.flatMap((opening) => {
    const wall = standing.get(opening.wall);
    if (!wall || opening.widthMm <= 0) return [];
    const [from, upTo] = openingSpan(opening, wallLength(wall));
    return [polygonOf(bodyPart(wall, from, upTo, OVER_MM).map(([x, y]) => ({ x, y })))];
  });
  const cut = (some: readonly Wall[]): Vec[][] =>
    ringsOf(bodiesOf(byId(some)).union.flatMap((polygon) => difference(polygon, gaps)));
  const seen = walls.filter((w) => w.sureness === 'seen');
  const edges = cut(walls);
  return { edges, seen: seen.length === walls.length ? edges : cut(seen) };
}

/** Everything the walls fill, openings not cut out. */
export const solidRings = (walls: readonly Wall[]): Vec[][] => ringsOf(bodiesOf(byId(walls)).union);
