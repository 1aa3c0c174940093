import { pointFrame, toHouse } from '../../geometry/hosting.ts';
import { sub3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Connection, Point } from '../../plan/records/pipework.ts';
import type { ThingMove } from '../moving/moved-plan.ts';
import { type CommandContext, refuse } from './define-command.ts';
import { moveThings } from './move-things.ts';

/** Tails of a point that a pipe meets. */
function metTails(plan: Plan, point: string): ReadonlySet<string> {
  const met = new Set<string>();
  for (const { place } of Object.values(plan.nodes)) {
    if (place.on === 'connection' && place.point === point) met.add(place.connection);
  }
  return met;
}

export interface TailsSet {
  readonly record: Point;
  readonly made: readonly string[];
}

/**
 * Gives a point its tails anew, before anything else of it is written: pipes that meet a tail which moves follow it. Refuses in
 * `lost`'s words where a tail that a pipe meets would go.
 */
export function setTails(
  draft: Plan,
  point: string,
  tails: readonly Connection[],
  ctx: CommandContext,
  lost: (label: string) => string,
): TailsSet {
  const before = ctx.before.points[point] ?? refuse('That point is no longer there.');
  const ids = new Set(tails.map((c) => c.id));
  if (ids.size < tails.length) refuse('Two of the tails have one name.');
  const met = metTails(ctx.before, point);
  for (const id of met) {
    if (!ids.has(id)) refuse(lost((before.connections.find((c) => c.id === id)?.label ?? id).toLowerCase()));
  }
  const frame = pointFrame(ctx.before, before);
  const moves = tails.flatMap((c): ThingMove[] => {
    const was = before.connections.find((b) => b.id === c.id);
    if (!was || !frame || !met.has(c.id)) return [];
    const by = sub3(toHouse(frame, c.at), toHouse(frame, was.at));
    return by.x === 0 && by.y === 0 && by.z === 0 ? [] : [{ point, connection: c.id, by }];
  });
  const made = moves.length === 0 ? [] : moveThings(draft, moves, ctx);
  const moved = draft.points[point] ?? refuse('That point is no longer there.');
  // What a move leaves is taken over as it is, and may not be written to.
  const record = { ...moved, connections: tails.map((c) => ({ ...c, at: { ...c.at } })) };
  draft.points[point] = record;
  return { record, made };
}
