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

/** Everything that is drawn anew: what moved, the pipes that end at it, and what stands on it. */
function touchedBy(before: Plan, after: Plan): Set<string> {
  const ids = new Set<string>();
  for (const map of ['walls', 'openings', 'points', 'nodes', 'legs', 'stretches', 'items'] as const) {
    if (before[map] === after[map]) continue;
    for (const [id, record] of Object.entries(after[map])) if (before[map][id] !== record) ids.add(id);
    for (const id of Object.keys(before[map])) if (!(id in after[map])) ids.add(id);
  }
  for (const o of Object.values(after.openings)) if (ids.has(o.wall)) ids.add(o.id);
  for (const p of Object.values(after.points)) if (p.place.on === 'wall' && ids.has(p.place.wall)) ids.add(p.id);
  const at = incidence(after);
  for (const id of [...ids]) {
    for (const node of at.nodesOn(id)) ids.add(node.id);
    for (const node of at.leaningOn(id)) ids.add(node.id);
  }
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

/** The plan with everything moved and all runs still joined, or why not. The plan that is given is left as it is. */
export function movedPlan(plan: Plan, moves: readonly ThingMove[], ids: IdMaker): Moved {
  try {
    const carried = onMovedWalls(plan, moves);
    const pipework = moves.filter(isPipework).filter((m) => !('point' in m && carried.has(m.point)));
    const first = pipework.length === 0 ? plan : withChanges(plan, must(displace(plan, pipework, { ids })));
    const walls = moves.filter(isWall);
    const second = placed(walls.length === 0 ? first : movedWalls(first, walls), moves.filter(isPlaced));
    const third = second === first ? first : withChanges(second, must(followHosts(first, second, { ids })));
    return { ok: true, plan: third, touched: touchedBy(plan, third) };
  } catch (cause) {
    if (cause instanceof NotMoved) return { ok: false, why: cause.message };
    throw cause;
  }
}

/** How far something goes in plan only. */
export const level = (x: number, y: number): Xyz => ({ x, y, z: 0 });
