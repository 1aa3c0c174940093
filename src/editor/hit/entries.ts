import type { Vec, View } from '../../drawing/display-list.ts';
import { connectionPlace, pointFrame, toHouse, wallSide } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { roomFaces } from '../../geometry/rooms.ts';
import { add, scale } from '../../geometry/vec.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { WorkPlane } from '../input/work-plane.ts';
import { boxOf, type Shape } from './shapes.ts';

export type EntryKind =
  | 'node'
  | 'connection'
  | 'leg'
  | 'stretch'
  | 'item'
  | 'point'
  | 'opening'
  | 'wall'
  | 'void'
  | 'room';

/** A record as it lies in a view, ready for the box index. */
export interface Entry {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly kind: EntryKind;
  readonly id: string;
  /** Point of a connection. */
  readonly owner: string | null;
  readonly service: string | null;
  readonly shape: Shape;
  /** Ends in space: one place for spots, two for lines. */
  readonly ends: readonly Xyz[];
  /** Taken out or cut off in this case: it may be chosen, but nothing catches on it. */
  readonly gone: boolean;
}

/** How far off a face still belongs to it, mm: as far as a boiler reaches into the room. */
const FACE_REACH_MM = 700;

interface Extra {
  readonly owner?: string | null;
  readonly service?: string | null;
  readonly ends?: readonly Xyz[];
  readonly gone?: boolean;
}

function entry(kind: EntryKind, id: string, shape: Shape, extra: Extra = {}): Entry {
  const { minX, minY, maxX, maxY } = boxOf(shape);
  const { owner = null, service = null, ends = [], gone = false } = extra;
  return { minX, minY, maxX, maxY, kind, id, owner, service, shape, ends, gone };
}

/** Outline of a point's box in a view; undefined where it has no place. */
export function pointRing(plan: Plan, plane: WorkPlane, point: Point): Vec[] | undefined {
  const frame = pointFrame(plan, point);
  if (!frame) return undefined;
  const { widthMm, depthMm, heightMm } = point.size;
  const corners: Xyz[] =
    plane.kind === 'plan'
      ? [
          { x: -widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: depthMm, z: 0 },
          { x: -widthMm / 2, y: depthMm, z: 0 },
        ]
      : [
          { x: -widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: heightMm },
          { x: -widthMm / 2, y: 0, z: heightMm },
        ];
  return corners.map((c) => plane.onto(toHouse(frame, c)));
}

/** What the entries of one view are made from. */
export interface Gather {
  readonly plan: Plan;
  readonly view: View;
  readonly plane: WorkPlane;
  readonly alive: Alive;
  readonly storey: string | undefined;
  readonly span: number;
}

export function gather(plan: Plan, view: View, plane: WorkPlane, alive: Alive): Gather {
  const wall = view.kind === 'face' ? plan.walls[view.wall] : undefined;
  const storey = view.kind === 'plan' ? view.storey : wall?.storey;
  return { plan, view, plane, alive, storey, span: wall ? wallSide(wall, 'left').lengthMm : 0 };
}

interface Spot {
  readonly at: Xyz;
  readonly storey: string;
}

/** On this floor, or near enough to this side of the wall. */
function shows(g: Gather, p: Spot): boolean {
  if (g.view.kind === 'plan') return p.storey === g.storey;
  const depth = g.plane.depth(p.at);
  const [s] = g.plane.onto(p.at);
  return depth >= -FACE_REACH_MM / 2 && depth <= FACE_REACH_MM && s >= -1 && s <= g.span + 1;
}

type Fated = 'nodes' | 'legs' | 'stretches' | 'items' | 'points' | 'walls' | 'openings' | 'voids';

/** Standing, or gone in this case but part of it; null for what belongs elsewhere. */
function standing(g: Gather, map: Fated, id: string): { gone: boolean } | null {
  if (g.alive.has(map, id)) return { gone: false };
  const state = g.alive.state(id);
  return g.alive.case.when === 'after' && (state === 'strip' || state === 'cap') ? { gone: true } : null;
}

function nodeEntry(g: Gather, id: string): Entry | null {
  const node = g.plan.nodes[id];
  const place = node && node.place.on === 'storey' ? nodePlace(g.plan, node) : undefined;
  const life = place && shows(g, place) ? standing(g, 'nodes', id) : null;
  if (!place || !life) return null;
  return entry('node', id, { is: 'spot', at: g.plane.onto(place.at) }, { gone: life.gone, ends: [place.at] });
}

function pipeEntry(g: Gather, map: 'legs' | 'stretches', id: string): Entry | null {
  const pipe = g.plan[map][id];
  const [na, nb] = pipe ? [g.plan.nodes[pipe.a], g.plan.nodes[pipe.b]] : [];
  const [a, b] = [na && nodePlace(g.plan, na), nb && nodePlace(g.plan, nb)];
  if (!pipe || !a || !b || (!shows(g, a) && !shows(g, b))) return null;
  const life = standing(g, map, id);
  if (!life) return null;
  const shape: Shape = { is: 'line', a: g.plane.onto(a.at), b: g.plane.onto(b.at) };
  const service = g.plan.runs[pipe.run]?.service ?? null;
  return entry(map === 'legs' ? 'leg' : 'stretch', id, shape, { gone: life.gone, service, ends: [a.at, b.at] });
}

function itemEntry(g: Gather, id: string): Entry | null {
  const node = g.plan.nodes[g.plan.items[id]?.node ?? ''];
  const place = node && nodePlace(g.plan, node);
  const life = place && shows(g, place) ? standing(g, 'items', id) : null;
  if (!place || !life) return null;
  return entry('item', id, { is: 'spot', at: g.plane.onto(place.at) }, { gone: life.gone, ends: [place.at] });
}

export const PIPEWORK = ['nodes', 'legs', 'stretches', 'items'] as const;

/** A record of the pipework as it lies in the view; null where it does not show in it. */
export function pipeworkEntry(g: Gather, map: (typeof PIPEWORK)[number], id: string): Entry | null {
  if (map === 'nodes') return nodeEntry(g, id);
  return map === 'items' ? itemEntry(g, id) : pipeEntry(g, map, id);
}

function* pipes(g: Gather): Generator<Entry> {
  for (const map of PIPEWORK) {
    for (const id of Object.keys(g.plan[map])) {
      const made = pipeworkEntry(g, map, id);
      if (made) yield made;
    }
  }
}

function* points(g: Gather): Generator<Entry> {
  for (const point of Object.values(g.plan.points)) {
    const frame = pointFrame(g.plan, point);
    const life = frame && standing(g, 'points', point.id);
    if (!frame || !life || !shows(g, { at: frame.origin, storey: point.storey })) continue;
    const ring = pointRing(g.plan, g.plane, point);
    if (ring) yield entry('point', point.id, { is: 'area', ring }, { ...life, ends: [frame.origin] });
    for (const c of point.connections) {
      const place = connectionPlace(g.plan, point.id, c.id);
      if (!place) continue;
      const shape: Shape = { is: 'spot', at: g.plane.onto(place.at) };
      yield entry('connection', c.id, shape, { ...life, owner: point.id, service: c.service, ends: [place.at] });
    }
  }
}

function wallRing(g: Gather, id: string, from = 0, to?: number): Vec[] {
  const wall = g.plan.walls[id];
  if (!wall) return [];
  const l = wallSide(wall, 'left');
  const r = wallSide(wall, 'right');
  const end = to ?? l.lengthMm;
  const on = (start: { x: number; y: number }, s: number): Vec => {
    const p = add(start, scale(l.along, s));
    return [p.x, p.y];
  };
  return [on(l.start, from), on(l.start, end), on(r.start, end), on(r.start, from)];
}

function* building(g: Gather): Generator<Entry> {
  const { plan, view, plane } = g;
  for (const wall of Object.values(plan.walls)) {
    const life = standing(g, 'walls', wall.id);
    if (view.kind === 'face' || !life || wall.storey !== g.storey) continue;
    yield entry('wall', wall.id, { is: 'area', ring: wallRing(g, wall.id) }, life);
  }
  for (const opening of Object.values(plan.openings)) {
    const wall = plan.walls[opening.wall];
    const life = wall && standing(g, 'openings', opening.id);
    if (!wall || !life || (view.kind === 'plan' ? wall.storey !== g.storey : wall.id !== view.wall)) continue;
    const { lengthMm, start, along } = wallSide(wall, 'left');
    const near = opening.from === 'a' ? opening.alongMm : lengthMm - opening.alongMm - opening.widthMm;
    if (view.kind === 'plan') {
      yield entry(
        'opening',
        opening.id,
        { is: 'area', ring: wallRing(g, wall.id, near, near + opening.widthMm) },
        life,
      );
      continue;
    }
    const floor = plan.storeys[wall.storey]?.floorMm ?? 0;
    const s = [near, near + opening.widthMm].map((d) => plane.onto({ ...add(start, scale(along, d)), z: 0 })[0]);
    const [s0 = 0, s1 = 0] = s;
    const [z0, z1] = [floor + opening.sillMm, floor + opening.headMm];
    yield entry(
      'opening',
      opening.id,
      {
        is: 'area',
        ring: [
          [s0, z0],
          [s1, z0],
          [s1, z1],
          [s0, z1],
        ],
      },
      life,
    );
  }
  if (view.kind === 'face') return;
  for (const v of Object.values(plan.voids)) {
    const life = standing(g, 'voids', v.id);
    if (!life || v.storey !== g.storey) continue;
    const ring = v.outline.map((p): Vec => [p.x, p.y]);
    const holes = v.holes.map((hole) => hole.map((p): Vec => [p.x, p.y]));
    yield entry('void', v.id, { is: 'area', ring, holes }, life);
  }
}

/** A named room by its outline, or by its seed alone where the walls do not close round it. */
function* rooms(g: Gather): Generator<Entry> {
  if (g.view.kind === 'face' || g.storey === undefined) return;
  const standingWalls = { has: (id: string) => g.alive.has('walls', id) };
  const { faces, lost } = roomFaces(g.plan, g.storey, standingWalls);
  const ring = (outline: readonly { x: number; y: number }[]) => outline.map((p): Vec => [p.x, p.y]);
  for (const face of faces) {
    for (const id of face.rooms)
      yield entry('room', id, { is: 'area', ring: ring(face.outline), holes: face.holes.map(ring) });
  }
  for (const id of lost) {
    const seed = g.plan.rooms[id]?.seed;
    if (seed) yield entry('room', id, { is: 'spot', at: [seed.x, seed.y] });
  }
}

/** Everything of a plan that shows in a view and stands in a case, or is taken out by it. */
export function* entriesOf(g: Gather): Generator<Entry> {
  yield* pipes(g);
  yield* points(g);
  yield* building(g);
  yield* rooms(g);
}
