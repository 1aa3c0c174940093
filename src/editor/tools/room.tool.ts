import { roomAt } from '../../geometry/rooms.ts';
import { aliveIn } from '../../network/cases.ts';
import { storeyOf } from '../panes.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';

type Ctx = ToolContext<null>;
const LIVE_PEN = 0.35;

function spaceAt(ctx: Ctx, event: ToolEvent) {
  const { plan, chosen, panes } = ctx.state;
  const alive = aliveIn(plan, chosen);
  return roomAt(plan, storeyOf(panes), event.floor, { has: (id) => alive.has('walls', id) });
}

function look(ctx: Ctx, event: ToolEvent): void {
  const space = event.pane === 'plan' ? spaceAt(ctx, event) : undefined;
  const corners = space?.outline.map((p) => ({ x: p.x, y: p.y, z: 0 })) ?? [];
  ctx.caught(space ? (ctx.plan.rooms[space.rooms[0] ?? '']?.name ?? 'closed space') : null);
  ctx.draft(space ? { lines: [{ pts: [...corners, ...corners.slice(0, 1)], ink: 'live', pen: LIVE_PEN }] } : null);
}

function leave(ctx: Ctx): string {
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

/** Names the space that is tapped; one that has a name already is chosen, so that it can be changed. */
export default defineTool<null>({
  id: 'room',
  label: 'Room',
  key: 'n',
  order: 55,
  initial: 'idle',
  memory: () => null,
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
      up(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Rooms are named in the plan.');
          return leave(ctx);
        }
        const space = spaceAt(ctx, event);
        const there = space?.rooms[0];
        if (there !== undefined) {
          ctx.select([{ map: 'rooms', id: there }]);
          return leave(ctx);
        }
        const told = { storey: storeyOf(ctx.state.panes), seed: event.floor, name: '' };
        const outcome = ctx.commit('room.add', told);
        const made = outcome.ok ? outcome.made[0] : undefined;
        if (made !== undefined) ctx.select([{ map: 'rooms', id: made }]);
        if (made !== undefined && !space) ctx.say('No walls close round this place yet.');
        return leave(ctx);
      },
      cancel: leave,
    },
  },
});
