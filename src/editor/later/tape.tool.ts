import type { Vec } from '../../drawing/display-list.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

interface Memory {
  from: Xyz | null;
  to: Xyz | null;
  pressed: Vec | null;
}
type Ctx = ToolContext<Memory>;
const LIVE_PEN = 0.18;

function pull(ctx: Ctx, event: ToolEvent): void {
  const { memory } = ctx;
  const pick = event.snap(memory.from ? { from: memory.from } : {});
  memory.to = pick.at;
  ctx.caught(pick.word);
  show(ctx);
}

/** Straight length; where the ends are at different heights, the level and the upright part beside it. */
function say(from: Xyz, to: Xyz): string {
  const straight = Math.round(distance3(from, to));
  const up = Math.round(to.z - from.z);
  const level = Math.round(Math.hypot(to.x - from.x, to.y - from.y));
  return up === 0 || level === 0
    ? String(straight)
    : `${straight}, level ${level}, ${up > 0 ? 'up' : 'down'} ${Math.abs(up)}`;
}

function show(ctx: Ctx): void {
  const { from, to } = ctx.memory;
  if (!to) {
    ctx.draft(null);
    return;
  }
  if (!from) {
    ctx.draft({ marks: [{ mark: 'aim', at: to }] });
    return;
  }
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, z: (from.z + to.z) / 2 };
  ctx.draft({
    lines: [{ pts: [from, to], ink: 'dimension', pen: LIVE_PEN }],
    marks: [from, to].map((at) => ({ mark: 'aim', at })),
    labels: [{ at: middle, text: say(from, to) }],
  });
}

function leave(ctx: Ctx): string {
  ctx.memory.from = null;
  ctx.memory.to = null;
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

function begin(ctx: Ctx, event: ToolEvent): string {
  ctx.memory.from = null;
  ctx.memory.from = event.snap().at;
  ctx.memory.to = ctx.memory.from;
  ctx.memory.pressed = event.screen;
  show(ctx);
  return 'pulling';
}

/** Measures between two places, by a drag or by two taps. Changes nothing in the plan. */
export default defineTool<Memory>({
  id: 'tape',
  label: 'Tape',
  key: 'm',
  order: 80,
  initial: 'idle',
  memory: () => ({ from: null, to: null, pressed: null }),
  states: {
    idle: { move: pull, down: begin, cancel: leave },
    pulling: {
      move: pull,
      up(ctx, event) {
        const { pressed } = ctx.memory;
        const dragged = pressed !== null && apart(pressed, event.screen) >= SLOP_PX[event.kind];
        if (dragged) pull(ctx, event);
        return dragged ? 'read' : 'open';
      },
      cancel: leave,
    },
    /** One end is down, the other follows the pointer till the next tap. */
    open: {
      move: pull,
      down(ctx, event) {
        pull(ctx, event);
        return 'closing';
      },
      cancel: leave,
    },
    closing: {
      move: pull,
      up(ctx, event) {
        pull(ctx, event);
        return 'read';
      },
      cancel: leave,
    },
    /** The measure stays in view till the next one. */
    read: { down: begin, cancel: leave },
  },
});
