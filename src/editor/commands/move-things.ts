import type { Plan } from '../../plan/plan.ts';
import { adopt } from '../moving/adopt.ts';
import { movedPlan, type ThingMove } from '../moving/moved-plan.ts';
import { removeAll } from './cascade.ts';
import type { CommandContext } from './define-command.ts';
import { refuse } from './define-command.ts';

/** Legs of no length go in a move: takes away what only they held, and what was said of them alone. */
export function dropLoose(draft: Plan, ctx: CommandContext): void {
  const lost = Object.values(draft.items).filter((i) => !draft.nodes[i.node]);
  removeAll(
    ctx.before,
    draft,
    lost.map((i) => ({ map: 'items', id: i.id })),
  );
  for (const item of Object.values(draft.items)) {
    if (item.along !== null && !draft.legs[item.along]) item.along = null;
  }
  for (const option of Object.values(draft.options)) {
    for (const id of Object.keys(option.fates)) if (ctx.before.legs[id] && !draft.legs[id]) delete option.fates[id];
  }
}

/**
 * Moves things inside a command, or refuses in the words of whatever could not follow. A leg that came to nothing takes
 * the items that only it held with it. Gives the ids of what a jog made.
 */
export function moveThings(draft: Plan, moves: readonly ThingMove[], ctx: CommandContext): string[] {
  const moved = movedPlan(ctx.before, moves, ctx.ids);
  if (!moved.ok) return refuse(moved.why);
  const made = adopt(draft, ctx.before, moved.plan);
  dropLoose(draft, ctx);
  return made;
}
