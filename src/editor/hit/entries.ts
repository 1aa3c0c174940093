import type { Vec, View } from '../../drawing/display-list.ts';
import { connectionPlace, pointFrame, toHouse, wallSide } from '../../geometry/hosting.ts';
import { nodePlace, type Place } from '../../geometry/places.ts';
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

type Extra = Partial<Pick<Entry, 'owner' | 'service' | 'ends' | 'gone'>>;
const entry = (kind: EntryKind, id: string, shape: Shape, extra: Extra = {}): Entry => ({
  ...boxOf(shape),
  kind,
  id,
  owner: null,
  service: null,
  ends: [],
  gone: false,
  shape,
  ...extra,
});

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

interface Gather {
  readonly plan: Plan;
  readonly view: View;
  readonly plane: WorkPlane;
  readonly alive: Alive;
  readonly storey: string | undefined;
  readonly span: number;
}

/** On this floor, or near enough to this side of the wall. */
function shows(g: Gather, places: readonly { at: Xyz; storey: string }[]): boolean {
  if (g.view.kind === 'plan') return places.some((p) => p.storey === g.storey);
  return places.some((p) => {
    const depth = g.plane.depth(p.at);
    const [s] = g.plane.onto(p.at);
    return depth >= -FACE_REACH_MM / 2 && depth <= FACE_REACH_MM && s >= -1 && s <= g.span + 1;
  });
}

/** Standing, or gone in this case but part of it; null for what belongs elsewhere. */
function standing(
  g: Gather,
  map: 'nodes' | 'legs' | 'stretches' | 'items' | 'points' | 'walls' | 'openings' | 'voids',
  id: string,
) {
  if (g.alive.has(map, id)) return { gone: false };
  const state = g.alive.state(id);
  return g.alive.case.when === 'after' && (state === 'strip' || state === 'cap') ? { gone: true } : null;
}

function* pipes(g: Gather): Generator<Entry> {
  const places = new Map<string, Place>();
  for (const node of Object.values(g.plan.nodes)) {
    const place = nodePlace(g.plan, node);
    if (!place) continue;
    places.set(node.id, place);
    const life = standing(g, 'nodes', node.id);
    if (!life || node.place.on === 'connection' || !shows(g, [place])) continue;
    yield entry('node', node.id, { is: 'spot', at: g.plane.onto(place.at) }, { ...life, ends: [place.at] });
  }
  for (const [kind, map] of [
    ['leg', 'legs'],
    ['stretch', 'stretches'],
  ] as const) {
    for (const pipe of Object.values(g.plan[map])) {
      const a = places.get(pipe.a);
      const b = places.get(pipe.b);
      const life = a && b && standing(g, map, pipe.id);
      if (!a || !b || !life || !shows(g, [a, b])) continue;
      const shape: Shape = { is: 'line', a: g.plane.onto(a.at), b: g.plane.onto(b.at) };
      yield entry(kind, pipe.id, shape, {
        ...life,
        service: g.plan.runs[pipe.run]?.service ?? null,
        ends: [a.at, b.at],
      });
    }
  }
  for (const item of Object.values(g.plan.items)) {
    const place = places.get(item.node);
    const life = place && standing(g, 'items', item.id);
    if (!place || !life || !shows(g, [place])) continue;
    yield entry('item', item.id, { is: 'spot', at: g.plane.onto(place.at) }, { ...life, ends: [place.at] });
  }
}

function* points(g: Gather): Generator<Entry> {
  for (const point of Object.values(g.plan.points)) {
    const frame = pointFrame(g.plan, point);
    const life = frame && standing(g, 'points', point.id);
    if (!frame || !life || !shows(g, [{ at: frame.origin, storey: point.storey }])) continue;
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
export function* entriesOf(plan: Plan, view: View, plane: WorkPlane, alive: Alive): Generator<Entry> {
  const wall = view.kind === 'face' ? plan.walls[view.wall] : undefined;
  const storey = view.kind === 'plan' ? view.storey : wall?.storey;
  const span = wall ? wallSide(wall, 'left').lengthMm : 0;
  const g: Gather = { plan, view, plane, alive, storey, span };
  yield* pipes(g);
  yield* points(g);
  yield* building(g);
  yield* rooms(g);
}
