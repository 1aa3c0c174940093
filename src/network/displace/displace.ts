import type { Plan } from '../../plan/plan.ts';
import type { Displaced, Move } from './changes.ts';
import { answer, type DisplaceOptions, follow, staying } from './follow.ts';
import { type Incidence, incidence } from './incidence.ts';
import { movedPoints, shifted, toldNodes } from './told.ts';

/** Is it part of the survey that is moved, and no new work? A corner is new where any new pipe meets it. */
function isSurveyed(plan: Plan, at: Incidence, move: Move): boolean {
  if ('point' in move) return plan.points[move.point]?.option === null;
  if ('leg' in move) return plan.legs[move.leg]?.option === null;
  return plan.nodes[move.node]?.option === null && at.legsAt(move.node).every((l) => l.option === null);
}

/**
 * Moves things and keeps their runs joined. A move along a leg changes its length, across it goes on to the next corner;
 * other connections and seen pipe that was there stay; what is left over becomes one jog in a run, or a refusal in words.
 * Falls keep their mm per m. Legs of no length go. Only what the move touches is looked at.
 */
export function displace(plan: Plan, moves: readonly Move[], options: DisplaceOptions): Displaced {
  return answer(() => {
    const at = incidence(plan);
    const hold = options.holdSeen ?? moves.some((m) => !isSurveyed(plan, at, m));
    const stays = staying(plan, at, hold, options);
    const points = movedPoints(plan, moves);
    const after = points.size === 0 ? plan : { ...plan, points: { ...plan.points, ...Object.fromEntries(points) } };
    return follow(plan, after, toldNodes(plan, after, at, moves, stays), points, stays, options);
  });
}

/**
 * The same where walls, heights or points have been changed already: whatever hangs on them has moved, and its pipes are
 * to follow. The changes are to be made to `after`.
 */
export function followHosts(before: Plan, after: Plan, options: DisplaceOptions): Displaced {
  return answer(() => {
    const at = incidence(before);
    const nodes = Object.values(after.nodes).filter((n) => n.id in before.nodes);
    const told = shifted(before, after, nodes);
    const stays = staying(before, at, options.holdSeen ?? true, options);
    return follow(before, after, told, new Map(), stays, options);
  });
}
