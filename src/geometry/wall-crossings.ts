import type { Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import type { Xy, Xyz } from '../plan/records/parts.ts';
import { COINCIDENT_MM } from '../plan/units.ts';
import { askBoxes, type BoxIndex, type BoxTree, boxTree, type IndexCounts } from './box-index.ts';
import { type Box3, boxOf } from './boxes.ts';
import { type OpeningBox, openingBox } from './opening-box.ts';
import { between, type Part, shared } from './outlines.ts';
import { rememberByRecords } from './remember.ts';
import { alongLine } from './segments.ts';
import { distance3 } from './vec.ts';
import { intoWall, outOfWall, type Standing, wallHeights, wallLength } from './wall-frame.ts';

/** Where a straight piece of pipe is in a wall. */
export interface WallCrossing {
  readonly wall: string;
  /** Middle of the part that is in the wall, on the pipe's centreline. */
  readonly at: Xyz;
  /** Along the piece from its first end. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly throughMm: number;
  /** Between pipe and face: 90 is square through, 0 along or up inside the wall. */
  readonly angleDeg: number;
  /** The opening it goes through instead of the wall. */
  readonly opening: string | null;
  /** False where the piece ends inside the wall. */
  readonly whole: boolean;
}

interface Placed {
  readonly wall: Wall;
  readonly box: Box3;
}

/** Heights are sieved later, since a wall may reach to the floor above: the index is in plan only. */
const FAR = Number.MAX_VALUE;
const wallTree = rememberByRecords((walls: readonly Wall[]): BoxTree<Placed> => {
  const corners = (w: Wall) => {
    const [l, h] = [wallLength(w), w.thicknessMm / 2];
    return [outOfWall(w, 0, h), outOfWall(w, 0, -h), outOfWall(w, l, h), outOfWall(w, l, -h)];
  };
  return boxTree(
    walls.map((wall) => ({
      wall,
      box: { ...boxOf(corners(wall).map((p) => ({ ...p, z: 0 }))), minZ: -FAR, maxZ: FAR },
    })),
  );
});

const overPlace = (wall: Wall, p: Xy): boolean => {
  const { u, v } = intoWall(wall, { ...p, z: 0 });
  return u >= 0 && u <= wallLength(wall) && Math.abs(v) <= wall.thicknessMm / 2;
};

/** A wall with another above it goes on through the floor between them; one with nothing above stops at its ceiling. */
function topAt(plan: Plan, wall: Wall, top: number, p: Xy, index: BoxIndex<Placed>): number {
  if (wall.heightMm !== null) return top;
  const above = index
    .search({ minX: p.x, maxX: p.x, minY: p.y, maxY: p.y, minZ: 0, maxZ: 0 })
    .filter((o) => o.wall.storey !== wall.storey && overPlace(o.wall, p))
    .flatMap((o) => plan.storeys[o.wall.storey]?.floorMm ?? [])
    .filter((z) => z >= top);
  return above.length === 0 ? top : Math.min(...above);
}

function partInWall(plan: Plan, wall: Wall, a: Xyz, b: Xyz, index: BoxIndex<Placed>): Part | undefined {
  const heights = wallHeights(plan, wall);
  if (!heights) return undefined;
  const [p, q] = [intoWall(wall, a), intoWall(wall, b)];
  // A pipe that runs on the face is not in the wall.
  const half = wall.thicknessMm / 2 - COINCIDENT_MM;
  const inPlan = [between(p.u, q.u, 0, wallLength(wall)), between(p.v, q.v, -half, half)];
  const flat = inPlan[0] && inPlan[1] && shared(inPlan[0], inPlan[1]);
  if (!flat) return undefined;
  const middle = alongLine({ a, b }, (flat[0] + flat[1]) / 2);
  // Only a pipe above the ceiling asks what stands up there.
  const top = Math.max(p.z, q.z) > heights.top ? topAt(plan, wall, heights.top, middle, index) : heights.top;
  const upright = between(p.z, q.z, heights.bottom, top);
  return upright && shared(flat, upright);
}

function openingAt(bodies: readonly OpeningBox[], wall: Wall, at: Xyz): string | null {
  const { u, z } = intoWall(wall, at);
  return bodies.find((o) => u >= o.fromMm && u <= o.toMm && z >= o.bottomZ && z <= o.topZ)?.opening ?? null;
}

/** Pipe to face, degrees. */
function angleToFace(wall: Wall, a: Xyz, b: Xyz): number {
  const [p, q] = [intoWall(wall, a), intoWall(wall, b)];
  const lengthMm = distance3(a, b);
  if (lengthMm === 0) return 0;
  return (Math.asin(Math.min(1, Math.abs(q.v - p.v) / lengthMm)) * 180) / Math.PI;
}

/** Looks for walls, for many pieces of one plan. */
export interface WallFinder {
  /** Walls a straight piece passes through, in the order it meets them. `storey` null: of any floor. */
  crossings(a: Xyz, b: Xyz, storey: string | null): WallCrossing[];
  readonly counts: IndexCounts;
}

function openingsByWall(plan: Plan, standing?: Standing): ReadonlyMap<string, readonly OpeningBox[]> {
  const found = new Map<string, OpeningBox[]>();
  for (const { id, wall } of Object.values(plan.openings)) {
    const body = !standing || standing.has(id) ? openingBox(plan, id) : undefined;
    if (body) found.set(wall, [...(found.get(wall) ?? []), body]);
  }
  return found;
}

/** A wall goes through the floor above only where another wall stands on it. */
export function wallFinder(plan: Plan, standing?: Standing): WallFinder {
  const index = askBoxes(wallTree(Object.values(plan.walls).filter((w) => !standing || standing.has(w.id))));
  const openings = openingsByWall(plan, standing);
  return {
    counts: index.counts,
    crossings(a, b, storey) {
      const lengthMm = distance3(a, b);
      const found: WallCrossing[] = [];
      for (const { wall } of index.search({ ...boxOf([a, b]), minZ: 0, maxZ: 0 })) {
        const part = storey === null || wall.storey === storey ? partInWall(plan, wall, a, b, index) : undefined;
        if (!part || (part[1] - part[0]) * lengthMm <= COINCIDENT_MM) continue;
        const at = alongLine({ a, b }, (part[0] + part[1]) / 2);
        found.push({
          wall: wall.id,
          at,
          fromMm: part[0] * lengthMm,
          toMm: part[1] * lengthMm,
          throughMm: (part[1] - part[0]) * lengthMm,
          angleDeg: angleToFace(wall, a, b),
          opening: openingAt(openings.get(wall.id) ?? [], wall, at),
          whole: part[0] > 0 && part[1] < 1,
        });
      }
      return found.sort((p, q) => p.fromMm - q.fromMm || (p.wall < q.wall ? -1 : 1));
    },
  };
}

/** Of one piece; for many, make a `wallFinder` once. */
export const wallCrossings = (plan: Plan, a: Xyz, b: Xyz, storey: string | null, standing?: Standing): WallCrossing[] =>
  wallFinder(plan, standing).crossings(a, b, storey);
