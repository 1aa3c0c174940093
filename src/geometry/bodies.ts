import type { Plan } from '../plan/plan.ts';
import type { Opening, Wall } from '../plan/records/building.ts';
import { openingSpan } from './opening-box.ts';
import type { Outline } from './outlines.ts';
import { difference, type MultiPolygon, polygonOf, union } from './polygons.ts';
import { rememberByRecords } from './remember.ts';
import { wallClusters } from './wall-clusters.ts';
import { outOfWall, type Standing, wallLength } from './wall-frame.ts';
import { type WallOutline, wallOutline } from './wall-outline.ts';

/** Walls of a storey as solid bodies. */
export interface WallBodies {
  /** All of them as one, openings not cut out. */
  readonly union: MultiPolygon;
  /** Body of each wall by id, anticlockwise, joined to its neighbours. */
  readonly outlines: ReadonlyMap<string, Outline>;
}

const outlinesOf = rememberByRecords((walls: readonly Wall[]): readonly WallOutline[] => {
  const place = new Map(walls.map((wall, at) => [wall.id as string, at]));
  const made = wallClusters(walls).flatMap((near) => near.map((wall) => wallOutline(wall, near)));
  return made.sort((p, q) => (place.get(p.wall.id) ?? 0) - (place.get(q.wall.id) ?? 0));
});

/** Of walls already picked out: one storey, sorted by id. */
export const bodiesOf = rememberByRecords((walls: readonly Wall[]): WallBodies => {
  const made = outlinesOf(walls);
  const of = new Map(made.map((m) => [m.wall.id as string, m]));
  // House by house: clipping all walls of many houses at once would take far longer than each by itself.
  const joined = wallClusters(walls).flatMap((near) => {
    const parts = near.flatMap((wall) => {
      const own = of.get(wall.id);
      return own ? [own.outline, ...own.patches] : [];
    });
    return union(parts.filter((o) => o.length > 2).map(polygonOf));
  });
  return {
    union: joined,
    outlines: new Map(made.map(({ wall, outline }) => [wall.id, outline])),
  };
});

/** Walls of a storey that stand in the case, sorted by id, so that the same house gives the same bodies. */
export function wallsOf(plan: Plan, storey: string, standing?: Standing): Wall[] {
  return Object.values(plan.walls)
    .filter((w) => w.storey === storey && (!standing || standing.has(w.id)))
    .sort((p, q) => (p.id < q.id ? -1 : 1));
}

export const wallBodies = (plan: Plan, storey: string, standing?: Standing): WallBodies =>
  bodiesOf(wallsOf(plan, storey, standing));

/** A wall with its openings cut out, as it is drawn. */
export interface WallPieces {
  readonly wall: string;
  readonly outline: Outline;
  /** What is left between the openings. */
  readonly pieces: MultiPolygon;
}

/** A hair wider than the wall, so that no film of it is left on a face. */
const OVER_MM = 1;

function openingOutline(wall: Wall, opening: Opening): Outline {
  const [from, to] = openingSpan(opening, wallLength(wall));
  const half = wall.thicknessMm / 2 + OVER_MM;
  return [
    outOfWall(wall, from, -half),
    outOfWall(wall, to, -half),
    outOfWall(wall, to, half),
    outOfWall(wall, from, half),
  ];
}

/** Every wall of a storey with its openings cut out, by wall id. Openings of no width cut nothing. */
export function wallPieces(plan: Plan, storey: string, standing?: Standing): ReadonlyMap<string, WallPieces> {
  const walls = wallsOf(plan, storey, standing);
  const openings = new Map<string, Opening[]>();
  for (const o of Object.values(plan.openings)) {
    if (o.widthMm > 0 && (!standing || standing.has(o.id))) openings.set(o.wall, [...(openings.get(o.wall) ?? []), o]);
  }
  return new Map(
    outlinesOf(walls).map(({ wall, outline }) => {
      const holes = (openings.get(wall.id) ?? []).map((o) => polygonOf(openingOutline(wall, o)));
      return [wall.id, { wall: wall.id, outline, pieces: difference(polygonOf(outline), holes) }];
    }),
  );
}
