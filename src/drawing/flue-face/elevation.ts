import { facePlane } from '../../geometry/face-plane.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { dot, sub } from '../../geometry/vec.ts';
import { wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import type { Vec } from '../display-list.ts';

/** A wall as far as it shows on an elevation, mm: across, and from its foot to its top above the datum. */
export interface ElevationWall {
  readonly id: string;
  /** The side that is seen; null where the whole house is seen as an outline. */
  readonly side: 'left' | 'right' | null;
  readonly from: number;
  readonly upTo: number;
  readonly low: number;
  readonly high: number;
  readonly assumed: boolean;
}

/** The outside of a wall, over all storeys. Across to the viewer's right in mm, up is z above the datum. */
export interface Elevation {
  readonly right: Xy;
  /** Out of the face, towards the viewer. */
  readonly out: Xy;
  readonly walls: readonly ElevationWall[];
  readonly from: number;
  readonly upTo: number;
  readonly at: (p: Xyz) => Vec;
  /** Out of the face; below zero behind it. */
  readonly depth: (p: Xyz) => number;
  /** A place in plan, so far across and so far out. */
  readonly inPlan: (across: number, depth: number) => Xy;
}

/** Walls whose faces are turned less than this from each other face the same way (the cosine of about two degrees). */
const SAME_FACING = 0.9994;

type Axes = Pick<Elevation, 'right' | 'out' | 'at' | 'depth' | 'inPlan'>;

function axesOf(origin: Xy, right: Xy, out: Xy): Axes {
  return {
    right,
    out,
    at: (p) => [dot(sub(p, origin), right), p.z],
    depth: (p) => dot(sub(p, origin), out),
    inPlan: (across, depth) => ({
      x: origin.x + right.x * across + out.x * depth,
      y: origin.y + right.y * across + out.y * depth,
    }),
  };
}

function partOf(plan: Plan, wall: Wall, axes: Axes, side: ElevationWall['side']): ElevationWall | undefined {
  const heights = wallHeights(plan, wall);
  if (!heights) return undefined;
  const [p, q] = [axes.at({ ...wall.a, z: 0 })[0], axes.at({ ...wall.b, z: 0 })[0]];
  return {
    id: wall.id,
    side,
    from: Math.min(p, q),
    upTo: Math.max(p, q),
    low: heights.bottom,
    high: heights.top,
    assumed: wall.sureness === 'assumed',
  };
}

/** The side of a wall that lies in the face: faces the same way, and stands no further before or behind it than the wall is thick. */
function sideInLine(wall: Wall, base: Wall, axes: Axes): 'left' | 'right' | undefined {
  for (const side of ['left', 'right'] as const) {
    const face = wallSide(wall, side);
    if (dot(face.out, axes.out) < SAME_FACING) continue;
    const off = Math.abs(axes.depth({ ...face.start, z: 0 }));
    if (off <= Math.max(base.thicknessMm, wall.thicknessMm)) return side;
  }
  return undefined;
}

function spanned(axes: Axes, walls: readonly ElevationWall[]): Elevation {
  return {
    ...axes,
    walls,
    from: Math.min(...walls.map((w) => w.from)),
    upTo: Math.max(...walls.map((w) => w.upTo)),
  };
}

/**
 * The face a terminal comes out of, with every wall in line with it. A terminal through a roof is looked at with the whole
 * house behind it as an outline. Undefined where there is no wall to be looked at.
 */
export function elevationOf(plan: Plan, face: FlueFace, alive: Alive): Elevation | undefined {
  const standing = Object.values(plan.walls).filter((w) => alive.has('walls', w.id) && wallLength(w) > 0);
  const base = face.wall === null ? undefined : plan.walls[face.wall];
  if (face.wall === null || face.side === null) {
    const axes = axesOf(face.at, { x: 1, y: 0 }, { x: 0, y: -1 });
    const walls = standing.flatMap((w) => partOf(plan, w, axes, null) ?? []);
    return walls.length === 0 ? undefined : spanned(axes, walls);
  }
  if (!base) return undefined;
  const { origin, right, out } = facePlane(base, face.side);
  const axes = axesOf(origin, right, out);
  const walls = standing.flatMap((w) => {
    const side = w.id === base.id ? face.side : sideInLine(w, base, axes);
    return (side && partOf(plan, w, axes, side)) ?? [];
  });
  return walls.length === 0 ? undefined : spanned(axes, walls);
}

/** Pictures traced on faces in line lie under this one: the key each lies under, and how far across its left end is. */
export function tracedFaces(
  plan: Plan,
  elevation: Elevation,
): readonly { readonly on: string; readonly across: number }[] {
  return elevation.walls.flatMap(({ id, side }) => {
    const wall = plan.walls[id];
    if (!wall || side === null) return [];
    return [{ on: `${id}:${side}`, across: elevation.at({ ...facePlane(wall, side).origin, z: 0 })[0] }];
  });
}
