import { facePlane } from '../../geometry/face-plane.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { TraceInHand } from '../editor-api.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

interface Memory {
  from: Xy | null;
}
type Ctx = ToolContext<Memory>;

const LIVE_PEN = 0.25;
const WANTED = { move: 0, scale: 2, level: 2, square: 4 } as const;
const ASKED = ['lower left', 'lower right', 'upper right', 'upper left'] as const;
const SQUARE: TraceInHand['doing'] = 'square';

/** Is the picture in hand under the pane that the pointer is in? */
function laidIn(ctx: Ctx, event: ToolEvent): boolean {
  const on = ctx.plan.blobRefs[ctx.inHand.trace?.blobRef ?? '']?.on;
  const { view } = ctx.state.panes[event.pane] ?? ctx.state.panes.plan;
  return on === (view.kind === 'plan' ? view.storey : `${view.wall}:${view.side}`);
}

/** A place of the plane the picture lies in: x and y of the house in plan, along and up on a face. */
const onPicture = (event: ToolEvent): Xy =>
  event.pane === 'plan' ? { x: event.floor.x, y: event.floor.y } : { x: event.plane[0], y: event.plane[1] };

/** Back into the house, for the live layer. */
function inHouse(plan: Plan, on: string | null | undefined, p: Xy): Xyz {
  const [wall, side] = (on ?? '').split(':');
  const body = wall === undefined ? undefined : plan.walls[wall];
  if (!body || (side !== 'left' && side !== 'right')) return { ...p, z: 0 };
  return facePlane(body, side).toHouse({ s: p.x, z: p.y, depth: 0 });
}

function show(ctx: Ctx, aim: Xy | null): void {
  const { trace } = ctx.inHand;
  if (!trace) {
    ctx.draft(null);
    return;
  }
  const { on } = ctx.plan.blobRefs[trace.blobRef] ?? { on: null };
  const pts = [...trace.taps, ...(aim ? [aim] : [])].map((p) => inHouse(ctx.plan, on, p));
  const ring = trace.doing === SQUARE && trace.taps.length === 4 ? [...pts.slice(0, 4), ...pts.slice(0, 1)] : pts;
  ctx.draft({
    lines: ring.length > 1 ? [{ pts: ring, ink: 'live', pen: LIVE_PEN }] : [],
    marks: pts.map((at) => ({ mark: 'aim', at })),
  });
}

const full = ({ doing, taps }: TraceInHand): boolean => taps.length >= WANTED[doing];

function ask(ctx: Ctx): void {
  const { trace } = ctx.inHand;
  if (!trace) return;
  if (trace.doing === 'move') ctx.caught(null);
  else if (full(trace)) ctx.caught(trace.doing === SQUARE ? 'type its width and height' : 'type its length');
  else
    ctx.caught(
      trace.doing === SQUARE
        ? `tap ${ASKED[trace.taps.length]}`
        : `tap ${trace.taps.length === 0 ? 'one end' : 'the other end'}`,
    );
}

function leave(ctx: Ctx): string {
  ctx.memory.from = null;
  ctx.draft(null);
  ctx.caught(null);
  const { trace } = ctx.inHand;
  if (trace && trace.taps.length > 0) ctx.setInHand({ trace: { ...trace, taps: [] } });
  return 'idle';
}

function drop(ctx: Ctx, at: Xy): void {
  const { trace } = ctx.inHand;
  const { from } = ctx.memory;
  const place = ctx.plan.blobRefs[trace?.blobRef ?? '']?.place;
  ctx.memory.from = null;
  ctx.draft(null);
  if (!trace || !place || !from) return;
  const [x, y] = [place.x + at.x - from.x, place.y + at.y - from.y];
  if (x !== place.x || y !== place.y) ctx.commit('trace.place', { blobRef: trace.blobRef, change: { x, y } });
}

/** Lays a picture under the drawing: drags it, or takes the places by which it is scaled, turned or squared. */
export default defineTool<Memory>({
  id: 'trace',
  label: 'Picture',
  key: 'y',
  order: 95,
  initial: 'idle',
  memory: () => ({ from: null }),
  states: {
    idle: {
      enter: ask,
      move(ctx, event) {
        const { trace } = ctx.inHand;
        if (!trace || trace.doing === 'move' || full(trace)) return;
        ask(ctx);
        show(ctx, laidIn(ctx, event) ? onPicture(event) : null);
      },
      down(ctx, event) {
        const { trace } = ctx.inHand;
        if (!trace) {
          ctx.say('Choose a picture first: under Pictures, in the panel.');
          return;
        }
        if (!laidIn(ctx, event)) {
          ctx.say('The picture lies under another view.');
          return;
        }
        if (trace.doing !== 'move') return 'tapping';
        if (ctx.plan.blobRefs[trace.blobRef]?.place?.locked) {
          ctx.say('The picture is locked: unlock it first.', true);
          return;
        }
        ctx.memory.from = onPicture(event);
        return 'dragging';
      },
      key(ctx, input) {
        const { trace } = ctx.inHand;
        if (input.key !== 'Backspace' || !trace || trace.taps.length === 0) return undefined;
        ctx.setInHand({ trace: { ...trace, taps: trace.taps.slice(0, -1) } });
        show(ctx, null);
        ask(ctx);
        return 'idle';
      },
      changed(ctx) {
        ask(ctx);
        show(ctx, null);
        return undefined;
      },
      cancel: leave,
    },
    tapping: {
      move: (ctx, event) => show(ctx, onPicture(event)),
      up(ctx, event) {
        const { trace } = ctx.inHand;
        if (!trace) return 'idle';
        const kept = full(trace) ? [] : trace.taps;
        ctx.setInHand({ trace: { ...trace, taps: [...kept, onPicture(event)] } });
        show(ctx, null);
        ask(ctx);
        const now = ctx.inHand.trace;
        if (now?.doing === 'level' && full(now)) {
          const [a, b] = now.taps;
          ctx.commit('trace.level', { blobRef: now.blobRef, a, b });
          return leave(ctx);
        }
        return 'idle';
      },
      cancel(ctx) {
        show(ctx, null);
        return 'idle';
      },
    },
    dragging: {
      move(ctx, event) {
        const { from } = ctx.memory;
        const { trace } = ctx.inHand;
        if (!from || !trace) return;
        const { on } = ctx.plan.blobRefs[trace.blobRef] ?? { on: null };
        const at = onPicture(event);
        ctx.draft({
          lines: [{ pts: [inHouse(ctx.plan, on, from), inHouse(ctx.plan, on, at)], ink: 'live', pen: LIVE_PEN }],
          marks: [{ mark: 'aim', at: inHouse(ctx.plan, on, at) }],
        });
      },
      up(ctx, event) {
        drop(ctx, onPicture(event));
        return 'idle';
      },
      cancel(ctx) {
        ctx.memory.from = null;
        ctx.draft(null);
        return 'idle';
      },
    },
  },
});
