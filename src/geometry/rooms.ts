import type { Plan } from '../plan/plan.ts';
import type { Room, Wall } from '../plan/records/building.ts';
import type { Xy } from '../plan/records/parts.ts';
import { bodiesOf, wallsOf } from './bodies.ts';
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

/** The closed spaces of a storey and the rooms in them. */
export function roomFaces(plan: Plan, storey: string, standing?: Standing): RoomFaces {
  const seeds: Room[] = Object.values(plan.rooms)
    .filter((r) => r.storey === storey)
    .sort((p, q) => (p.id < q.id ? -1 : 1));
  const faces = remembered(wallsOf(plan, storey, standing)).map((face) => ({
    ...face,
    rooms: seeds.filter((r) => holds(face, r.seed)).map((r) => r.id),
  }));
  const found = new Set(faces.flatMap((f) => f.rooms));
  return {
    faces,
    lost: seeds.filter((r) => !found.has(r.id)).map((r) => r.id),
    doubled: faces.filter((f) => f.rooms.length > 1),
  };
}

/** The one of some spaces that a place lies in. */
export const faceAt = (faces: readonly RoomFace[], p: Xy): RoomFace | undefined => faces.find((face) => holds(face, p));

/** The closed space a place lies in; undefined in a wall, outside, or where nothing is closed. */
export const roomAt = (plan: Plan, storey: string, p: Xy, standing?: Standing): RoomFace | undefined =>
  faceAt(roomFaces(plan, storey, standing).faces, p);
