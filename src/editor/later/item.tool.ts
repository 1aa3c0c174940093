import type { PlaceArg } from '../commands/place-arg.ts';
import type { Pick } from '../input/pick.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

interface Memory {
  pick: Pick | null;
}
type Ctx = ToolContext<Memory>;

function look(ctx: Ctx, event: ToolEvent): void {
  const pick = event.snap({ only: ['node', 'leg'] });
  ctx.memory.pick = pick.target ? pick : null;
  ctx.caught(ctx.memory.pick?.word ?? null);
  ctx.draft(pick.target ? { marks: [{ mark: 'aim', at: pick.at }] } : null);
}

function placeOf(pick: Pick): PlaceArg | undefined {
  const { target } = pick;
  if (target?.is === 'node') return { at: 'node', node: target.node };
  if (target?.is === 'leg') return { at: 'leg', leg: target.leg, alongMm: target.alongMm };
  return undefined;
}

function leave(ctx: Ctx): string {
  ctx.memory.pick = null;
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

/** Puts a valve, filter, drain cock… into a pipe, which is split there, or at a corner or end. */
export default defineTool<Memory>({
  id: 'item',
  label: 'Item',
  key: 'i',
  order: 70,
  initial: 'idle',
  memory: () => ({ pick: null }),
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      cancel: leave,
    },
    placing: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        const place = ctx.memory.pick ? placeOf(ctx.memory.pick) : undefined;
        if (!place) ctx.say('Tap the pipe that it goes on.');
        else {
          const outcome = ctx.commit('item.add', { kind: ctx.inHand.itemKind, place });
          const made = outcome.ok ? outcome.made[0] : undefined;
          if (made !== undefined) ctx.select([{ map: 'items', id: made }]);
        }
        return leave(ctx);
      },
      cancel: leave,
    },
  },
});
