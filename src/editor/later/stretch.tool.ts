import type { Vec } from '../../drawing/display-list.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { servicesAt } from '../commands/legs-at.ts';
import { apart } from '../hit/shapes.ts';
import type { Pick } from '../input/pick.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';
import { placeOfPick, type RouteFrame } from '../tools/route-path.ts';

interface Memory {
  from: Pick | null;
  to: Pick | null;
  pressed: Vec | null;
}
type Ctx = ToolContext<Memory>;
const ONLY = ['connection', 'node', 'leg', 'wallFace', 'wallCorner', 'alignment', 'grid'];
const LIVE_PEN = 0.4;
const blank = (): Memory => ({ from: null, to: null, pressed: null });

function serviceOf(ctx: Ctx, { target }: Pick): string | undefined {
  if (target?.is === 'connection') return target.service;
  if (target?.is === 'node') return [...servicesAt(ctx.plan, target.node)][0];
  return target?.is === 'leg' ? ctx.plan.runs[ctx.plan.legs[target.leg]?.run ?? '']?.service : undefined;
}

function frameOf(ctx: Ctx): RouteFrame | undefined {
  const { plan, state, inHand } = ctx;
  const pane = state.panes[state.panes.active] ?? state.panes.plan;
  const plane = workPlane(plan, pane.view);
  const wall = pane.view.kind === 'face' ? plan.walls[pane.view.wall] : undefined;
  return plane && { plan, plane, storey: wall?.storey ?? storeyOf(state.panes), height: inHand.height };
}

function show(ctx: Ctx): void {
  const { from, to } = ctx.memory;
  ctx.caught(to?.word ?? null);
  if (!to) ctx.draft(null);
  else if (!from) ctx.draft({ marks: [{ mark: 'aim', at: to.at }] });
  else
    ctx.draft({ lines: [{ pts: [from.at, to.at], ink: 'live', pen: LIVE_PEN }], marks: [{ mark: 'aim', at: to.at }] });
}

function look(ctx: Ctx, event: ToolEvent): void {
  const { from } = ctx.memory;
  ctx.memory.to = event.snap({ only: ONLY, ...(from ? { service: ctx.inHand.service } : {}) });
  show(ctx);
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

/** At least the straight way, at most along the three ways of the house; as many bends as those ways need. */
function place(ctx: Ctx): string {
  const { from, to } = ctx.memory;
  const frame = frameOf(ctx);
  if (!from || !to || !frame || distance3(from.at, to.at) < COINCIDENT_MM) return 'aiming';
  const parts = [to.at.x - from.at.x, to.at.y - from.at.y, to.at.z - from.at.z].map(Math.abs);
  const ways = parts.filter((mm) => mm >= COINCIDENT_MM).length;
  const outcome = ctx.commit('stretch.add', {
    service: ctx.inHand.service,
    a: placeOfPick(frame, from),
    b: placeOfPick(frame, to),
    lengthMm: { lo: distance3(from.at, to.at), hi: parts.reduce((sum, mm) => sum + mm, 0) },
    bends: { lo: 0, hi: ways },
    tube: { kind: ctx.inHand.tube.kind, size: null },
  });
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made !== undefined) ctx.select([{ map: 'stretches', id: made }]);
  return leave(ctx);
}

/** Pipe that is there but that nobody can see: from one end that shows to the other. Its length is only bounded. */
export default defineTool<Memory>({
  id: 'stretch',
  label: 'Unseen',
  key: 'u',
  order: 35,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        const { to } = ctx.memory;
        ctx.memory.from = to;
        ctx.memory.pressed = event.screen;
        const service = to && serviceOf(ctx, to);
        if (service !== undefined && service !== null) ctx.setInHand({ service });
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move: look,
      up(ctx, event) {
        const { pressed } = ctx.memory;
        if (!pressed || apart(pressed, event.screen) < SLOP_PX[event.kind]) return 'aiming';
        look(ctx, event);
        return place(ctx);
      },
      cancel: leave,
    },
    aiming: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      changed(ctx) {
        const { from } = ctx.memory;
        const node = from?.target?.is === 'node' ? ctx.plan.nodes[from.target.node] : undefined;
        const lost = from?.target?.is === 'node' && !(node && nodePlace(ctx.plan, node));
        return lost ? leave(ctx) : undefined;
      },
      key: (ctx, key) => (key.key === 'Escape' ? leave(ctx) : undefined),
      cancel: leave,
    },
    placing: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        return place(ctx);
      },
      cancel(ctx) {
        ctx.memory.to = null;
        show(ctx);
        return 'aiming';
      },
    },
  },
});
