import type { Vec } from '../../drawing/display-list.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { add, scale } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { OpeningSize } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX, TOLERANCE_PX } from '../input/tolerance.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';
import { nearestWall, type OnWall, onWall } from '../tools/on-wall.ts';

interface Memory {
  on: OnWall | null;
  /** Where the press began, for an opening that is dragged from one side to the other. */
  start: OnWall | null;
  pressed: Vec | null;
  dragged: boolean;
}
type Ctx = ToolContext<Memory>;
const REACH = 2;
const LIVE_PEN = 0.35;
const blank = (): Memory => ({ on: null, start: null, pressed: null, dragged: false });

/** As the last one of its kind that was drawn, else as assumed; without width where neither is known. */
function sizeOf({ plan, inHand, assumptions }: Ctx, on: OnWall): OpeningSize {
  const like = Object.values(plan.openings).filter((o) => o.kind === inHand.openingKind);
  const found = like.at(-1) ?? assumptions.openings?.[inHand.openingKind];
  const ceiling = plan.storeys[on.wall.storey]?.ceilingMm ?? 0;
  return found
    ? { widthMm: found.widthMm, sillMm: found.sillMm, headMm: found.headMm }
    : { widthMm: 0, sillMm: 0, headMm: ceiling };
}

interface Placed extends OpeningSize {
  readonly alongMm: number;
}

/** Under the pointer with its usual width, kept inside the wall; or from where the drag began to where it is. */
function placed(ctx: Ctx): Placed | undefined {
  const { on, start, dragged } = ctx.memory;
  if (!on) return undefined;
  const size = sizeOf(ctx, on);
  if (dragged && start) {
    const [from, to] = [Math.min(start.alongMm, on.alongMm), Math.max(start.alongMm, on.alongMm)];
    return { ...size, alongMm: from, widthMm: to - from };
  }
  const most = Math.max(on.lengthMm - size.widthMm, 0);
  return { ...size, alongMm: Math.min(Math.max(on.alongMm - size.widthMm / 2, 0), most) };
}

function show(ctx: Ctx): void {
  const { on } = ctx.memory;
  const at = placed(ctx);
  ctx.caught(on ? 'on wall' : null);
  if (!on || !at) {
    ctx.draft(null);
    return;
  }
  const faces = (['left', 'right'] as const).map((side) => {
    const { start, along } = wallSide(on.wall, side);
    const pts: Xyz[] = [at.alongMm, at.alongMm + at.widthMm].map((s) => ({ ...add(start, scale(along, s)), z: 0 }));
    return { pts, ink: 'opening', pen: LIVE_PEN };
  });
  const middle = faces[0]?.pts[0] ?? { x: 0, y: 0, z: 0 };
  ctx.draft({
    lines: faces,
    labels: [{ at: middle, text: `${Math.round(at.alongMm)}, ${Math.round(at.widthMm)} wide` }],
  });
}

function look(ctx: Ctx, event: ToolEvent): void {
  const { memory, state } = ctx;
  const held = memory.start?.wall;
  const { x, y } = event.floor;
  if (event.pane === 'face') memory.on = null;
  else if (held) memory.on = onWall(held, x, y);
  else memory.on = nearestWall(state, event.plane, TOLERANCE_PX[event.kind] * ctx.mmPerPx * REACH) ?? null;
  show(ctx);
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

/** Slides along a wall under the pointer. A tap takes the usual width, a drag goes from one side to the other. */
export default defineTool<Memory>({
  id: 'opening',
  label: 'Opening',
  key: 'o',
  order: 50,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        if (!ctx.memory.on) {
          ctx.say('Tap the wall that the opening is in.');
          return;
        }
        ctx.memory.start = ctx.memory.on;
        ctx.memory.pressed = event.screen;
        return 'placing';
      },
      cancel: leave,
    },
    placing: {
      move(ctx, event) {
        const { memory } = ctx;
        memory.dragged ||= memory.pressed !== null && apart(memory.pressed, event.screen) >= SLOP_PX[event.kind];
        look(ctx, event);
      },
      up(ctx) {
        const at = placed(ctx);
        const { on } = ctx.memory;
        if (at && on && at.widthMm > 0) {
          const { alongMm, widthMm, sillMm, headMm } = at;
          const told = { alongMm, widthMm, sillMm, headMm, wall: on.wall.id, kind: ctx.inHand.openingKind, from: 'a' };
          const outcome = ctx.commit('opening.add', told);
          const made = outcome.ok ? outcome.made[0] : undefined;
          if (made !== undefined) ctx.select([{ map: 'openings', id: made }]);
        } else ctx.say('Drag from one side of the opening to the other.');
        return leave(ctx);
      },
      cancel: leave,
    },
  },
});
