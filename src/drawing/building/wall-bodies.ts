import polygonClipping, { type MultiPolygon, type Polygon, type Ring } from 'polygon-clipping';
import { wallSide } from '../../geometry/hosting.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Vec } from '../display-list.ts';

/** Walls of a storey as they are cut in plan: gaps where openings are, one body where walls meet. */
export interface WallBodies {
  /** Outlines of everything, seen or assumed: the cut edge. */
  readonly edges: readonly (readonly Vec[])[];
  /** What is filled: walls somebody has seen. */
  readonly seen: readonly (readonly Vec[])[];
  /** Floors that the walls close in. */
  readonly floors: readonly (readonly Vec[])[];
}

const pair = (p: Xy): [number, number] => [p.x, p.y];

/** Corners of a stretch of a wall's body, from face to face. */
export function bodyPart(wall: Wall, from: number, upTo: number, over = 0): Vec[] {
  const left = wallSide(wall, 'left');
  const right = wallSide(wall, 'right');
  const at = (side: typeof left, s: number): Vec =>
    pair({
      x: side.start.x + side.along.x * s + side.out.x * over,
      y: side.start.y + side.along.y * s + side.out.y * over,
    });
  return [at(left, from), at(left, upTo), at(right, upTo), at(right, from)];
}

/** Where an opening lies along its wall, from end a. */
export function openingSpan(wall: Wall, opening: Opening): { from: number; upTo: number } {
  const { lengthMm } = wallSide(wall, 'left');
  const from = opening.from === 'a' ? opening.alongMm : lengthMm - opening.alongMm - opening.widthMm;
  return { from, upTo: from + opening.widthMm };
}

const polygon = (pts: readonly Vec[]): Polygon => [pts.map(([x, y]): [number, number] => [x, y])];

const open = (ring: Ring): Vec[] => ring.slice(0, -1).map(([x, y]): Vec => [x, y]);

function joined(walls: readonly Wall[]): MultiPolygon {
  const [first, ...rest] = walls
    .filter((w) => w.thicknessMm > 0 && Math.hypot(w.a.x - w.b.x, w.a.y - w.b.y) > 0)
    .map((w) => polygon(bodyPart(w, 0, wallSide(w, 'left').lengthMm)));
  return first ? polygonClipping.union(first, ...rest) : [];
}

/** A hair past both faces, so that no sliver is left where an opening is cut out. */
const OVER_MM = 1;

export function wallBodies(walls: readonly Wall[], openings: readonly Opening[]): WallBodies {
  const byId = new Map(walls.map((w) => [w.id as string, w]));
  const gaps = openings.flatMap((opening) => {
    const wall = byId.get(opening.wall);
    if (!wall) return [];
    const { from, upTo } = openingSpan(wall, opening);
    return [polygon(bodyPart(wall, from, upTo, OVER_MM))];
  });
  const cut = (solid: MultiPolygon): MultiPolygon =>
    gaps.length > 0 && solid.length > 0 ? polygonClipping.difference(solid, ...gaps) : solid;
  const all = joined(walls);
  const seenWalls = walls.filter((w) => w.sureness === 'seen');
  const seen = seenWalls.length === walls.length ? all : joined(seenWalls);
  return {
    edges: cut(all).flatMap((p) => p.map(open)),
    seen: cut(seen).flatMap((p) => p.map(open)),
    floors: all.flatMap((p) => p.slice(1).map(open)),
  };
}
