import type { Vec } from '../../drawing/display-list.ts';
import { toEdge } from '../../geometry/outlines.ts';
import { roomAt } from '../../geometry/rooms.ts';
import { distance } from '../../geometry/vec.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { KeyInput } from '../editor-api.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import { workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import { aimChain, at3 } from './chain-of-corners.ts';
import type { ToolEvent, ToolStateChart } from './define-tool.ts';
import { askWay } from './void-asks.ts';
import { startBox } from './void-face.ts';
import { encloses } from './void-joists.ts';
import { backToSelect, type Ctx, chosenVoid, LIVE_PEN, leave, type Memory, ring3, slid } from './void-memory.ts';
import { askTask, endTask, isTask, taskKey } from './void-task-asks.ts';
import { startTask } from './void-tasks.ts';
import { toldVoid } from './void-told.ts';

const ONLY = ['wallCorner', 'rightAngle', 'wallFace', 'alignment', 'grid'];
/** A floor, a ceiling or a slab goes from wall to wall; a box or duct has an outline of its own. */
const WHOLE = new Set(['ceiling', 'floor', 'slab']);

const look = (ctx: Ctx, event: ToolEvent): void => aimChain(ctx, event, ONLY, 'closes the void');

/** The closed space a tap here would take whole; near its walls a tap is a corner. */
function roomUnder(ctx: Ctx, event: ToolEvent) {
  const { plan, inHand, state } = ctx;
  if (event.pane !== 'plan' || inHand.voidTask !== 'room' || !WHOLE.has(inHand.voidKind)) return undefined;
  const alive = aliveIn(plan, state.chosen);
  const space = roomAt(plan, storeyOf(state.panes), event.floor, { has: (id) => alive.has('walls', id) });
  const near = TOLERANCE_PX[event.kind] * ctx.mmPerPx;
  return space && toEdge(event.floor, space.outline) > near ? space : undefined;
}

/** Pressed and drawn across: a box between the two corners, upright as the plan is seen. */
function boxTo({ memory, plan, state }: Ctx): Xy[] {
  const { aim, corners } = memory;
  const [from] = corners;
  const plane = workPlane(plan, state.panes.plan.view);
  if (!from || !aim || !plane) return [];
  const [[x0, y0], [x1, y1]] = [plane.onto(at3(from)), plane.onto(at3(aim))];
  const corner = (on: Vec): Xy => {
    const { x, y } = plane.place(on, 0);
    return { x, y };
  };
  return [from, corner([x1, y0]), aim, corner([x0, y1])];
}

function show(ctx: Ctx, ring: readonly Xy[]): void {
  ctx.caught(ctx.memory.word);
  const { aim } = ctx.memory;
  if (!aim) {
    ctx.draft(null);
    return;
  }
  const pts = ring.map(at3);
  ctx.draft({
    lines: pts.length > 1 ? [{ pts, ink: 'live', pen: LIVE_PEN }] : [],
    marks: [{ mark: 'aim', at: at3(aim) }],
  });
}

/** Where nothing can be asked the void is made at once; joists are asked of floors and ceilings. */
function finish(ctx: Ctx, outline: readonly Xy[]): string | undefined {
  if (!encloses(outline)) {
    ctx.say('A void needs three corners that are not in line.');
    return 'outlining';
  }
  if (ctx.inHand.voidTask === 'hole') {
    const v = chosenVoid(ctx);
    const outcome = v && ctx.commit('void.cutHole', { void: v.id, hole: outline });
    return outcome?.ok ? backToSelect(ctx) : leave(ctx);
  }
  const kind = ctx.inHand.voidKind;
  if (kind === 'chase') {
    ctx.say('A chase is drawn on the face of its wall. Choose the wall and fold its face up.', true);
    return leave(ctx);
  }
  if (ctx.assumptions.joists && (kind === 'ceiling' || kind === 'floor')) {
    ctx.memory.outline = outline;
    return askWay(ctx);
  }
  const outcome = ctx.commit('void.add', toldVoid(ctx, outline));
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made !== undefined) ctx.select([{ map: 'voids', id: made }]);
  return leave(ctx);
}

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { corners } = ctx.memory;
  if (input.key === 'Enter') return finish(ctx, corners);
  if (input.key === 'Escape') return leave(ctx);
  if (input.key !== 'Backspace') return undefined;
  corners.pop();
  if (corners.length === 0) return leave(ctx);
  show(ctx, corners);
  return 'outlining';
}

function hover(ctx: Ctx, event: ToolEvent): void {
  const { voidTask } = ctx.inHand;
  if (event.pane === 'face' || (isTask(voidTask) && voidTask !== 'hole')) return;
  const space = roomUnder(ctx, event);
  ctx.memory.room = space?.outline ?? null;
  if (space) {
    const name = ctx.plan.rooms[space.rooms[0] ?? '']?.name;
    ctx.caught(name ? `all of ${name}` : 'the whole room');
    ctx.draft({ lines: [{ pts: ring3(space.outline), ink: 'live', pen: LIVE_PEN }] });
    return;
  }
  look(ctx, event);
  show(ctx, []);
}

/** Outlines by a tap in a room, by corners, or by a box across two corners in one drag. */
export const outlineStates: Readonly<Record<string, ToolStateChart<Memory>>> = {
  idle: {
    move: hover,
    down(ctx, event) {
      if (event.pane === 'face') return startBox(ctx, event);
      const { voidTask } = ctx.inHand;
      if (isTask(voidTask) && voidTask !== 'hole') return startTask(ctx, event);
      hover(ctx, event);
      look(ctx, event);
      ctx.memory.corners = ctx.memory.aim ? [ctx.memory.aim] : [];
      ctx.memory.pressed = event.screen;
      return 'starting';
    },
    key: taskKey,
    changed(ctx) {
      if (isTask(ctx.inHand.voidTask)) askTask(ctx);
      return undefined;
    },
    interrupt(ctx) {
      askTask(ctx);
      return 'idle';
    },
    cancel: endTask,
  },
  starting: {
    move(ctx, event) {
      if (!slid(ctx, event)) return;
      look(ctx, event);
      const box = boxTo(ctx);
      show(ctx, [...box, ...box.slice(0, 1)]);
    },
    up(ctx, event) {
      look(ctx, event);
      const { room } = ctx.memory;
      if (!slid(ctx, event)) return room ? finish(ctx, room) : 'outlining';
      const next = finish(ctx, boxTo(ctx));
      return next === 'outlining' ? leave(ctx) : next;
    },
    cancel: leave,
  },
  outlining: {
    move(ctx, event) {
      look(ctx, event);
      show(ctx, [...ctx.memory.corners, ...(ctx.memory.aim ? [ctx.memory.aim] : [])]);
    },
    down(ctx, event) {
      look(ctx, event);
      return 'placing';
    },
    key,
    cancel: leave,
  },
  placing: {
    move(ctx, event) {
      look(ctx, event);
      show(ctx, [...ctx.memory.corners, ...(ctx.memory.aim ? [ctx.memory.aim] : [])]);
    },
    up(ctx, event) {
      look(ctx, event);
      const { corners, aim } = ctx.memory;
      const last = corners.at(-1);
      if (aim && aim === corners[0]) return finish(ctx, corners);
      if (aim && last && distance(aim, last) >= COINCIDENT_MM) corners.push(aim);
      show(ctx, corners);
      return 'outlining';
    },
    cancel(ctx) {
      ctx.memory.aim = null;
      show(ctx, ctx.memory.corners);
      return 'outlining';
    },
  },
};
