import { hostedXy } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { add3, distance3, sub3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { PlanNode, Point } from '../../plan/records/pipework.ts';
import { quantise } from '../../plan/units.ts';
import { type Move, Refusal } from './changes.ts';
import type { Incidence } from './incidence.ts';
import { sayPoint } from './say.ts';
import { isAlong, oldThrough } from './slide.ts';

const STILL_MM = 1e-9;

/** A height by so much more; its reference stays, and the bounds of what was assumed go along. */
export function raised(height: HeightRef, by: number): HeightRef {
  if (by === 0) return height;
  const mm = quantise(height.mm + by);
  const { assumed } = height;
  if (!assumed) return { ...height, mm };
  return { ...height, mm, assumed: { ...assumed, lo: quantise(assumed.lo + by), hi: quantise(assumed.hi + by) } };
}

function movedPoint(plan: Plan, point: Point, by: Xyz): Point {
  const { place } = point;
  const height = raised(place.height, by.z);
  if (place.on === 'storey') {
    return { ...point, place: { ...place, x: quantise(place.x + by.x), y: quantise(place.y + by.y), height } };
  }
  const host = hostedXy(plan, place);
  if (!host) throw new Refusal(`${sayPoint(plan, point.id)} hangs on a wall that is gone.`);
  const right = by.x * host.right.x + by.y * host.right.y;
  const out = by.x * host.out.x + by.y * host.out.y;
  // Right along the left side of a wall leads from its end b to its end a.
  const towardsB = place.side === 'left' ? -right : right;
  const alongMm = quantise(place.alongMm + (place.from === 'a' ? towardsB : -towardsB));
  return { ...point, place: { ...place, alongMm, standOffMm: quantise(place.standOffMm + out), height } };
}

function movedConnection(plan: Plan, point: Point, id: string, by: Xyz): Point {
  const angle = point.place.on === 'storey' ? (point.place.angleDeg * Math.PI) / 180 : 0;
  const host = point.place.on === 'wall' ? hostedXy(plan, point.place) : undefined;
  const right = host?.right ?? { x: Math.cos(angle), y: Math.sin(angle) };
  const out = host?.out ?? { x: right.y, y: -right.x };
  const local = { x: by.x * right.x + by.y * right.y, y: by.x * out.x + by.y * out.y, z: by.z };
  const connections = point.connections.map((c) => {
    if (c.id !== id) return c;
    const at = add3(c.at, local);
    return { ...c, at: { ...c.at, x: quantise(at.x), y: quantise(at.y), z: quantise(at.z) } };
  });
  return { ...point, connections };
}

/** Points as they are to be, by the moves that name them. */
export function movedPoints(plan: Plan, moves: readonly Move[]): Map<string, Point> {
  const points = new Map<string, Point>();
  for (const move of moves) {
    if (!('point' in move)) continue;
    const point = points.get(move.point) ?? plan.points[move.point];
    if (!point) throw new Refusal('That point is not in the plan.');
    const moved =
      'connection' in move ? movedConnection(plan, point, move.connection, move.by) : movedPoint(plan, point, move.by);
    points.set(move.point, moved);
  }
  return points;
}

/** One node told to go two ways: both where they are across each other, else there is no answer. */
function both(one: Xyz, other: Xyz): Xyz {
  const pick = (a: number, b: number): number => {
    if (Math.abs(a - b) < STILL_MM || Math.abs(b) < STILL_MM) return a;
    if (Math.abs(a) < STILL_MM) return b;
    throw new Refusal('One corner is told to go to two places.');
  };
  return { x: pick(one.x, other.x), y: pick(one.y, other.y), z: pick(one.z, other.z) };
}

/**
 * What the moves come to. `told`: places that are given. `carried`: mm up, for corners that stand free and take their
 * height from something that has moved; they follow it unless a pipe holds them.
 */
export interface Told {
  readonly told: Map<string, Xyz>;
  readonly carried: Map<string, number>;
}

/** How far each of these nodes goes because what it is placed by has changed between the two plans. */
export function shifted(before: Plan, after: Plan, nodes: Iterable<PlanNode>): Told {
  const told = new Map<string, Xyz>();
  const carried = new Map<string, number>();
  for (const node of nodes) {
    const was = nodePlace(before, node)?.at;
    const is = nodePlace(after, node)?.at;
    if (!was || !is || distance3(was, is) <= STILL_MM) continue;
    if (node.place.on === 'connection') told.set(node.id, sub3(is, was));
    else carried.set(node.id, is.z - was.z);
  }
  return { told, carried };
}

/** Nodes whose place hangs on a point: its own, those that lean on it, and so on through points that lean on it. */
function hangingOn(at: Incidence, point: string): PlanNode[] {
  const points = new Set([point]);
  for (const id of points) for (const other of at.pointsLeaningOn(id)) points.add(other);
  return [...points].flatMap((id) => [...at.nodesOn(id), ...at.leaningOn(id)]);
}

const rounded = (at: Xyz): Xyz => ({ x: quantise(at.x), y: quantise(at.y), z: quantise(at.z) });

/**
 * Nodes whose place the moves give. Ends of a moved leg that stay where they are (a connection, pipe that was there) are
 * left out; naming such a node itself is refused.
 */
export function toldNodes(
  plan: Plan,
  after: Plan,
  at: Incidence,
  moves: readonly Move[],
  stays: (node: string) => boolean,
): Told {
  const told = new Map<string, Xyz>();
  const carried = new Map<string, number>();
  const tell = (id: string, by: Xyz): void => {
    const before = told.get(id);
    told.set(id, before ? both(before, by) : by);
  };
  for (const move of moves) {
    if ('point' in move) {
      for (const node of at.nodesOn(move.point)) {
        if (!('connection' in move)) told.set(node.id, { x: 0, y: 0, z: 0 });
      }
      const hanging = shifted(plan, after, hangingOn(at, move.point));
      for (const [id, by] of hanging.told) told.set(id, by);
      for (const [id, up] of hanging.carried) carried.set(id, up);
      continue;
    }
    if ('leg' in move) {
      const leg = plan.legs[move.leg];
      if (!leg) throw new Refusal('That leg is not in the plan.');
      const free = [leg.a, leg.b].filter((id) => !stays(id));
      if (free.length === 0) throw new Refusal('Both ends of that leg are held. Draw it anew.');
      for (const id of free) tell(id, move.by);
      continue;
    }
    const node = plan.nodes[move.node];
    const place = node && nodePlace(plan, node)?.at;
    if (!node || !place) throw new Refusal('That corner is not in the plan, or has no height.');
    if (node.place.on === 'connection') {
      throw new Refusal(`That end is a connection of ${sayPoint(plan, node.place.point)}: move the point.`);
    }
    const by = 'to' in move ? sub3(rounded(move.to), place) : move.by;
    const old = oldThrough(plan, at, node.id);
    if (stays(node.id) && !(old && isAlong(by, old))) {
      throw new Refusal('Pipe that was there meets this corner, so it stays.');
    }
    tell(node.id, by);
  }
  for (const id of told.keys()) carried.delete(id);
  return { told, carried };
}
