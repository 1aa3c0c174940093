import { wallSide } from '../../geometry/hosting.ts';
import { openingSpan } from '../../geometry/opening-box.ts';
import { outOfWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening } from '../../plan/records/building.ts';
import { clipLine } from '../building/clip-line.ts';
import { bodyPart } from '../building/wall-bodies.ts';
import type { Vec } from '../display-list.ts';
import type { FacePlane } from '../pipes/plane.ts';

/** From one place to another across a face, lesser first. */
export interface Across {
  readonly from: number;
  readonly upTo: number;
}

/** What stands this far before a face is cut by its drawing. */
const STRIP_MM = 30;

/** Line in plan along which a face's drawing cuts what stands before it. */
export function cutLine(plan: Plan, plane: FacePlane): { through: Vec; way: Vec } | undefined {
  if (plane.view.kind !== 'face') return undefined;
  const wall = plan.walls[plane.view.wall];
  if (!wall) return undefined;
  const { start } = wallSide(wall, plane.view.side);
  return {
    through: [start.x + plane.out.x * STRIP_MM, start.y + plane.out.y * STRIP_MM],
    way: [plane.right.x, plane.right.y],
  };
}

/** Where a shape in plan is cut by the line before a face. */
export function cutBy(
  rings: readonly (readonly Vec[])[],
  line: { through: Vec; way: Vec },
  plane: FacePlane,
): Across[] {
  return clipLine(rings, line.through, line.way).map(([a, b]) => {
    const [p, q] = [a, b].map(([x, y]) => plane.at({ x, y, z: 0 })[0]) as [number, number];
    return { from: Math.min(p, q), upTo: Math.max(p, q) };
  });
}

/** Walls that meet the face on this side, cut through. */
export function wallsCut(plan: Plan, plane: FacePlane, alive: Alive): Across[] {
  const line = cutLine(plan, plane);
  if (!line || plane.view.kind !== 'face') return [];
  const own = plane.view.wall;
  const cuts = Object.values(plan.walls)
    .filter((w) => w.storey === plane.storey && w.id !== own && alive.has('walls', w.id))
    .flatMap((w) => cutBy([bodyPart(w, 0, wallLength(w))], line, plane))
    .filter((c) => c.upTo > plane.from - 1 && c.from < plane.upTo + 1)
    .sort((a, b) => a.from - b.from);
  const merged: Across[] = [];
  for (const cut of cuts) {
    const last = merged.at(-1);
    if (last && cut.from <= last.upTo + 1)
      merged[merged.length - 1] = { from: last.from, upTo: Math.max(last.upTo, cut.upTo) };
    else merged.push(cut);
  }
  return merged;
}

/** Where an opening of the face's own wall lies across it. */
export function openingAcross(plan: Plan, opening: Opening, plane: FacePlane): Across | undefined {
  const wall = plan.walls[opening.wall];
  if (!wall) return undefined;
  const [from, upTo] = openingSpan(opening, wallLength(wall));
  const at = (s: number): number => plane.at({ ...outOfWall(wall, s, 0), z: 0 })[0];
  return { from: Math.min(at(from), at(upTo)), upTo: Math.max(at(from), at(upTo)) };
}

export const rectangle = (a: Across, low: number, high: number): Vec[] => [
  [a.from, low],
  [a.upTo, low],
  [a.upTo, high],
  [a.from, high],
];
