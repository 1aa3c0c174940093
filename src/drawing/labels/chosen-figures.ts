import { type FacePlane, facePlane, faceStretches } from '../../geometry/face-plane.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import { openingSpan } from '../../geometry/opening-box.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Measures, Vec, Wish } from '../display-list.ts';
import type { Plane } from '../pipes/plane.ts';

type DimensionWish = Extract<Wish, { w: 'dimension' }>;

/** From what is chosen to its measured line, in paper mm. */
const AWAY_MM = 7;
const LEAST_MM = 1;

/** The face of a wall that a figure is told on, as it lies in the view. */
interface Laid {
  readonly face: FacePlane;
  at(s: number, z: number): Vec;
  /** Along the face to the right as one faces it, and away from what is measured. */
  readonly way: Vec;
  readonly side: Vec;
  /** Where the clear face begins and ends: at the walls that meet it, else at the wall's own ends. */
  clear(s: number): readonly [number, number];
}

function laidOn(plan: Plan, plane: Plane, wall: Wall, side: 'left' | 'right'): Laid {
  const face = facePlane(wall, side);
  const nought = plane.at({ x: 0, y: 0, z: 0 });
  const asSeen = (v: { readonly x: number; readonly y: number }): Vec => {
    const [x, y] = plane.at({ ...v, z: 0 });
    return [x - nought[0], y - nought[1]];
  };
  const upright = plane.view.kind === 'face';
  return {
    face,
    at: (s, z) => plane.at(face.toHouse({ s, z, depth: 0 })),
    way: asSeen(face.right),
    side: upright ? [0, 1] : asSeen(face.out),
    clear(s) {
      const here = faceStretches(plan, wall, side).find((f) => f.fromS <= s && s <= f.toS);
      return here ? [here.fromS, here.toS] : [0, face.lengthMm];
    },
  };
}

/** On a face only what is on it; in plan the side of a room before that of the outside. */
function sideOf(plan: Plan, plane: Plane, wall: Wall): 'left' | 'right' | undefined {
  const { view } = plane;
  if (view.kind === 'face') return view.wall === wall.id ? view.side : undefined;
  if (view.storey !== wall.storey) return undefined;
  return faceStretches(plan, wall, 'left').length > 0 || faceStretches(plan, wall, 'right').length === 0
    ? 'left'
    : 'right';
}

function wish(a: Vec, b: Vec, side: Vec, unsure: boolean, measures: Measures): DimensionWish[] {
  const mm = Math.hypot(a[0] - b[0], a[1] - b[1]);
  if (mm < LEAST_MM) return [];
  return [{ w: 'dimension', a, b, side, awayMm: AWAY_MM, text: Math.round(mm).toString(), unsure, measures }];
}

function ofWall(plan: Plan, plane: Plane, wall: Wall): DimensionWish[] {
  const side = sideOf(plan, plane, wall);
  if (side === undefined) return [];
  const unsure = wall.sureness === 'assumed';
  const measures = { of: 'wall', id: wall.id } as const;
  const laid = laidOn(plan, plane, wall, side);
  if (plane.view.kind === 'plan') {
    const inside = faceStretches(plan, wall, side).length > 0;
    const beyond = faceStretches(plan, wall, side === 'left' ? 'right' : 'left').length > 0;
    // Rather out of the house than through its rooms.
    const out: Vec = inside && !beyond ? [-laid.side[0], -laid.side[1]] : laid.side;
    return wish(plane.at({ ...wall.a, z: 0 }), plane.at({ ...wall.b, z: 0 }), out, unsure, measures);
  }
  const storey = plan.storeys[wall.storey];
  const top = (storey?.floorMm ?? 0) + (wall.heightMm ?? storey?.ceilingMm ?? 0);
  return wish(laid.at(0, top), laid.at(laid.face.lengthMm, top), laid.side, unsure, measures);
}

function ofOpening(plan: Plan, plane: Plane, opening: Opening): DimensionWish[] {
  const wall = plan.walls[opening.wall];
  const side = wall && sideOf(plan, plane, wall);
  if (!wall || side === undefined) return [];
  const { face, at, side: out, clear } = laidOn(plan, plane, wall, side);
  const [near, far] = openingSpan(opening, wallLength(wall));
  const [lo, hi] = face.leftEnd === 'a' ? [near, far] : [face.lengthMm - far, face.lengthMm - near];
  const [from, upTo] = clear((lo + hi) / 2);
  const z = (plan.storeys[wall.storey]?.floorMm ?? 0) + opening.headMm;
  const unsure = opening.sureness === 'assumed';
  const onTheLeft = opening.from === face.leftEnd ? 1 : -1;
  const along = (sign: 1 | -1): Measures => ({ of: 'opening', id: opening.id, what: 'along', sign });
  return [
    ...(lo > from ? wish(at(from, z), at(lo, z), out, unsure, along(onTheLeft)) : []),
    ...wish(at(lo, z), at(hi, z), out, unsure, { of: 'opening', id: opening.id, what: 'width', sign: 1 }),
    ...(hi < upTo ? wish(at(hi, z), at(upTo, z), out, unsure, along(onTheLeft === 1 ? -1 : 1)) : []),
  ];
}

function ofPoint(plan: Plan, plane: Plane, point: Point): DimensionWish[] {
  const { place } = point;
  const wall = place.on === 'wall' ? plan.walls[place.wall] : undefined;
  const frame = pointFrame(plan, point);
  if (place.on !== 'wall' || !wall || !frame) return [];
  const { view } = plane;
  if (view.kind === 'face' ? view.wall !== wall.id || view.side !== place.side : view.storey !== wall.storey) return [];
  const { face, at, way, side, clear } = laidOn(plan, plane, wall, place.side);
  const { s } = face.toFace(frame.origin);
  const [from, upTo] = clear(s);
  const z = frame.origin.z;
  const unsure = point.sureness === 'assumed';
  const moved = (to: Vec): Measures => ({ of: 'point', id: point.id, way: to });
  const across = [
    ...(s > from ? wish(at(from, z), at(s, z), side, unsure, moved(way)) : []),
    ...(s < upTo ? wish(at(s, z), at(upTo, z), side, unsure, moved([-way[0], -way[1]])) : []),
  ];
  const floor = plan.storeys[point.storey]?.floorMm;
  if (view.kind === 'plan' || floor === undefined || z <= floor) return across;
  const guessed = unsure || frame.zHi - frame.zLo > LEAST_MM;
  return [...across, ...wish(at(s, floor), at(s, z), [1, 0], guessed, moved([0, 1]))];
}

/**
 * Figures of the place of what is chosen: the length of a wall, an opening and a thing on a wall from where the clear face
 * ends. They stand only while it is chosen, and each can be told anew.
 */
export function chosenFigures(
  plan: Plan,
  plane: Plane | undefined,
  chosen: readonly { readonly map: string; readonly id: string }[],
): { id: string; wish: DimensionWish }[] {
  if (!plane) return [];
  return chosen.flatMap(({ map, id }) => {
    const wall = map === 'walls' ? plan.walls[id] : undefined;
    const opening = map === 'openings' ? plan.openings[id] : undefined;
    const point = map === 'points' ? plan.points[id] : undefined;
    const wishes = wall
      ? ofWall(plan, plane, wall)
      : opening
        ? ofOpening(plan, plane, opening)
        : point
          ? ofPoint(plan, plane, point)
          : [];
    return wishes.map((w) => ({ id, wish: w }));
  });
}
