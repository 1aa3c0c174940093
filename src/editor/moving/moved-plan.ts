import { type Changes, type Displaced, type Move, withChanges } from '../../network/displace/changes.ts';
import { displace, followHosts } from '../../network/displace/displace.ts';
import { incidence } from '../../network/displace/incidence.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { movedWalls, type WallMove } from './moved-walls.ts';
import { NotMoved } from './not-moved.ts';

/** What a gesture moves, all in one step. `place`: a point taken to another wall or off it. */
export type ThingMove = Move | WallMove | { readonly point: string; readonly place: Point['place'] };

export type Moved =
  | { readonly ok: true; readonly plan: Plan; readonly touched: ReadonlySet<string> }
  | { readonly ok: false; readonly why: string };

const isWall = (move: ThingMove): move is WallMove => 'wall' in move;
const isPlaced = (move: ThingMove): move is Extract<ThingMove, { place: unknown }> => 'place' in move;
const isPipework = (move: ThingMove): move is Move => !isWall(move) && !isPlaced(move);

function must(answer: Displaced): Changes {
  if (!answer.ok) throw new NotMoved(answer.why);
  return answer.changes;
}

const PIPEWORK = ['nodes', 'points', 'legs', 'stretches', 'items'] as const;

/** Adds what some changes to the pipework name, made and taken away alike. */
function noteChanges(ids: Set<string>, c: Changes): void {
  for (const map of PIPEWORK) for (const id of Object.keys(c[map])) ids.add(id);
  for (const record of [...c.addedNodes, ...c.addedLegs]) ids.add(record.id);
  for (const id of [...c.removedNodes, ...c.removedLegs]) ids.add(id);
}

function noteMap<T>(ids: Set<string>, before: Readonly<Record<string, T>>, after: Readonly<Record<string, T>>): void {
  if (before === after) return;
  for (const [id, record] of Object.entries(after)) if (before[id] !== record) ids.add(id);
}

/** Everything that is drawn anew with what changed: what hangs on it, the pipes that end at it, what stands on those. */
function withNeighbours(plan: Plan, ids: Set<string>): ReadonlySet<string> {
  const walls = [...ids].some((id) => plan.walls[id]);
  for (const o of walls ? Object.values(plan.openings) : []) if (ids.has(o.wall)) ids.add(o.id);
  for (const p of walls ? Object.values(plan.points) : [])
    if (p.place.on === 'wall' && ids.has(p.place.wall)) ids.add(p.id);
  const at = incidence(plan);
  for (const id of [...ids]) for (const node of [...at.nodesOn(id), ...at.leaningOn(id)]) ids.add(node.id);
  for (const id of [...ids]) {
    for (const record of [...at.legsAt(id), ...at.stretchesAt(id), ...at.itemsAt(id)]) ids.add(record.id);
  }
  return ids;
}

function placed(plan: Plan, moves: readonly Extract<ThingMove, { place: unknown }>[]): Plan {
  if (moves.length === 0) return plan;
  const points = { ...plan.points };
  for (const { point, place } of moves) {
    const record = points[point];
    if (!record) throw new NotMoved('That point is no longer there.');
    if (place.on === 'wall' && !plan.walls[place.wall]) throw new NotMoved('That wall is no longer there.');
    points[point] = { ...record, place };
  }
  return { ...plan, points };
}

/** Points that are moved with the wall they hang on move once. */
function onMovedWalls(plan: Plan, moves: readonly ThingMove[]): Set<string> {
  const walls = new Set(moves.filter(isWall).map((m) => m.wall));
  return new Set(
    Object.values(plan.points)
      .filter((p) => p.place.on === 'wall' && walls.has(p.place.wall))
      .map((p) => p.id),
  );
}

/**
 * The plan with everything moved and all runs still joined, or why not. The plan that is given is left as it is. `put`:
 * how changes get into the plan; in the middle of a gesture they may only be laid over it.
 */
export function movedPlan(plan: Plan, moves: readonly ThingMove[], ids: IdMaker, put = withChanges): Moved {
  try {
    const carried = onMovedWalls(plan, moves);
    const pipework = moves.filter(isPipework).filter((m) => !('point' in m && carried.has(m.point)));
    const touched = new Set<string>();
    const make = (on: Plan, answer: Displaced): Plan => {
      const changes = must(answer);
      noteChanges(touched, changes);
      return put(on, changes);
    };
    const first = pipework.length === 0 ? plan : make(plan, displace(plan, pipework, { ids }));
    const walls = moves.filter(isWall);
    const second = placed(walls.length === 0 ? first : movedWalls(first, walls), moves.filter(isPlaced));
    for (const map of ['walls', 'openings', 'points'] as const) noteMap<unknown>(touched, first[map], second[map]);
    const third = second === first ? first : make(second, followHosts(first, second, { ids }));
    return { ok: true, plan: third, touched: withNeighbours(plan, touched) };
  } catch (cause) {
    if (cause instanceof NotMoved) return { ok: false, why: cause.message };
    throw cause;
  }
}

/** How far something goes in plan only. */
export const level = (x: number, y: number): Xyz => ({ x, y, z: 0 });
