import type { Plan } from '../plan/plan.ts';
import type { Room, Wall } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';
import { bodiesOf, wallsOf } from './bodies.ts';
import { type BoxTree, boxTree } from './box-index.ts';
import type { Box3 } from './boxes.ts';
import { insideArea, insideOutline, type Outline, perimeter, signedArea } from './outlines.ts';
import { type MultiPolygon, outlineOf } from './polygons.ts';
import { rememberByRecords } from './remember.ts';
import type { Standing } from './wall-frame.ts';
import { JOINT_MM } from './wall-joints.ts';

/** A space closed in by walls. */
export interface RoomFace {
  /** Inside faces of the walls round it. */
  readonly outline: Outline;
  /** Walls that stand free in it. */
  readonly holes: readonly Outline[];
  readonly areaMm2: number;
  /** Rooms whose seed lies in it, sorted by id. More than one: somebody has to say which it is. */
  readonly rooms: readonly string[];
}

export interface RoomFaces {
  readonly faces: readonly RoomFace[];
  /** Rooms of the storey whose seed lies in no closed space, sorted by id. */
  readonly lost: readonly string[];
  /** Spaces with two or more seeds. */
  readonly doubled: readonly RoomFace[];
}

type Face = Omit<RoomFace, 'rooms'>;

/** Narrower than the gap that two joints may leave is no room. */
const LEAST_WIDTH_MM = 2 * JOINT_MM;
/** Of a long narrow space twice the area over the girth is its width. */
const widthOf = (areaMm2: number, girthMm: number): number => (2 * areaMm2) / girthMm;

function facesOf(bodies: MultiPolygon): Face[] {
  const closed = bodies.flatMap((polygon) => polygon.slice(1).map(outlineOf));
  const free = bodies.map((polygon) => outlineOf(polygon[0] ?? []));
  const within = (island: Outline, outline: Outline) => {
    const [corner] = island;
    return (
      corner !== undefined &&
      insideOutline(corner, outline) &&
      Math.abs(signedArea(island)) < Math.abs(signedArea(outline))
    );
  };
  return closed.flatMap((outline): Face[] => {
    const inside = free.filter((island) => within(island, outline));
    // An island in a room inside a house that itself stands in a courtyard belongs to the room, not to the courtyard.
    const holes = inside.filter((island) => !inside.some((other) => other !== island && within(island, other)));
    const areaMm2 = Math.abs(signedArea(outline)) - holes.reduce((sum, h) => sum + Math.abs(signedArea(h)), 0);
    const girthMm = [outline, ...holes].reduce((sum, o) => sum + perimeter(o), 0);
    return widthOf(areaMm2, girthMm) < LEAST_WIDTH_MM ? [] : [{ outline, holes, areaMm2 }];
  });
}

const remembered = rememberByRecords((walls: readonly Wall[]): readonly Face[] => facesOf(bodiesOf(walls).union));

const holds = (face: Face, p: Xy): boolean => insideArea(p, face.outline, face.holes);

interface Boxed {
  readonly box: Box3;
  readonly at: number;
}
const trees = new WeakMap<readonly Face[], BoxTree<Boxed>>();

/** Spaces by their boxes in plan, so that asking where a place lies does not go through all of them. */
function treeOf(faces: readonly Face[]): BoxTree<Boxed> {
  const known = trees.get(faces);
  if (known) return known;
  const made = boxTree(
    faces.map(({ outline }, at): Boxed => {
      const [xs, ys] = [outline.map((p) => p.x), outline.map((p) => p.y)];
      const [minX, minY] = [Math.min(...xs), Math.min(...ys)];
      return { at, box: { minX, minY, minZ: 0, maxX: Math.max(...xs), maxY: Math.max(...ys), maxZ: 0 } };
    }),
  );
  trees.set(faces, made);
  return made;
}

/** Which of some spaces a place lies in, as a place in their row; undefined where in none. */
function placeIn(faces: readonly Face[], p: Xy): number | undefined {
  const here = { minX: p.x, minY: p.y, minZ: 0, maxX: p.x, maxY: p.y, maxZ: 0 };
  const near = treeOf(faces).near(here);
  const found = near.map(({ entry }) => entry.at).sort((a, b) => a - b);
  return found.find((at) => {
    const face = faces[at];
    return face !== undefined && holds(face, p);
  });
}

interface Asked {
  readonly plan: Plan;
  readonly faces: Map<string, RoomFaces>;
}
const asked = new WeakMap<Standing, Asked>();

/** The closed spaces of a storey and the rooms in them. One who says what stands asks for one plan, and gets it from memory. */
export function roomFaces(plan: Plan, storey: string, standing?: Standing): RoomFaces {
  if (!standing) return namedFaces(plan, storey, standing);
  const before = asked.get(standing);
  const kept = before?.plan === plan ? before : { plan, faces: new Map<string, RoomFaces>() };
  asked.set(standing, kept);
  const faces = kept.faces.get(storey) ?? namedFaces(plan, storey, standing);
  kept.faces.set(storey, faces);
  return faces;
}

function namedFaces(plan: Plan, storey: string, standing: Standing | undefined): RoomFaces {
  const seeds: Room[] = Object.values(plan.rooms)
    .filter((r) => r.storey === storey)
    .sort((p, q) => (p.id < q.id ? -1 : 1));
  const closed = remembered(wallsOf(plan, storey, standing));
  const named = new Map<number, string[]>();
  for (const room of seeds) {
    const at = placeIn(closed, room.seed);
    if (at !== undefined) named.set(at, [...(named.get(at) ?? []), room.id]);
  }
  const faces = closed.map((face, at) => ({ ...face, rooms: named.get(at) ?? [] }));
  const found = new Set(faces.flatMap((f) => f.rooms));
  return {
    faces,
    lost: seeds.filter((r) => !found.has(r.id)).map((r) => r.id),
    doubled: faces.filter((f) => f.rooms.length > 1),
  };
}

/** The one of some spaces that a place lies in. */
export function faceAt(faces: readonly RoomFace[], p: Xy): RoomFace | undefined {
  const at = placeIn(faces, p);
  return at === undefined ? undefined : faces[at];
}

/** The closed space a place lies in; undefined in a wall, outside, or where nothing is closed. */
export const roomAt = (plan: Plan, storey: string, p: Xy, standing?: Standing): RoomFace | undefined =>
  faceAt(roomFaces(plan, storey, standing).faces, p);
