import type { Vec } from '../../drawing/display-list.ts';
import { distance, sub, unit } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { KeyInput } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { storeyOf } from '../panes.ts';
import { aimChain, at3, type Chain } from './chain-of-corners.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';

interface Memory extends Chain {
  typed: string;
  pressed: Vec | null;
  lastDown: { readonly screen: Vec; readonly time: number } | null;
}

type Ctx = ToolContext<Memory>;
const ONLY = ['wallCorner', 'rightAngle', 'wallFace', 'wallCentreline', 'alignment', 'grid'];
const DOUBLE_TAP_MS = 400;
const MOST_DIGITS = 6;
const LIVE_PEN = 0.5;
const blank = (): Memory => ({ corners: [], aim: null, word: null, typed: '', pressed: null, lastDown: null });

const last = (ctx: Ctx): Xy | undefined => ctx.memory.corners.at(-1);

const aimAt = (ctx: Ctx, event: ToolEvent): void => aimChain(ctx, event, ONLY, 'closes the room');

function end(ctx: Ctx): Xy | undefined {
  const { aim, typed } = ctx.memory;
  const from = last(ctx);
  if (!aim || !from || typed === '' || distance(from, aim) < COINCIDENT_MM) return aim ?? undefined;
  const way = unit(sub(aim, from));
  return { x: from.x + way.x * Number(typed), y: from.y + way.y * Number(typed) };
}

function show(ctx: Ctx): void {
  const { memory } = ctx;
  ctx.caught(memory.word);
  ctx.typed(memory.typed);
  const from = last(ctx);
  const to = end(ctx);
  if (!to) {
    ctx.draft(null);
    return;
  }
  const marks = [{ mark: 'aim', at: at3(to) }];
  if (!from || distance(from, to) < COINCIDENT_MM) {
    ctx.draft({ marks });
    return;
  }
  const half = ctx.inHand.wallThicknessMm / 2;
  const way = unit(sub(to, from));
  const edge = (side: number) =>
    [from, to].map((p) => at3({ x: p.x - way.y * side * half, y: p.y + way.x * side * half }));
  const middle = at3({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  ctx.draft({
    lines: [1, -1].map((side) => ({ pts: edge(side), ink: 'wallEdge', pen: LIVE_PEN })),
    marks,
    labels: [{ at: middle, text: String(Math.round(distance(from, to))) }],
  });
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  return 'idle';
}

function place(ctx: Ctx): string {
  const { memory, inHand, state } = ctx;
  const from = last(ctx);
  const to = end(ctx);
  if (!from || !to || distance(from, to) < COINCIDENT_MM) return 'aiming';
  const outcome = ctx.commit('wall.add', {
    storey: storeyOf(state.panes),
    a: from,
    b: to,
    thicknessMm: inHand.wallThicknessMm,
    construction: inHand.wallConstruction,
  });
  if (!outcome.ok) return 'aiming';
  const closed = memory.corners[0] === to;
  memory.corners = [...memory.corners, to];
  memory.typed = '';
  memory.aim = null;
  if (closed) return leave(ctx);
  show(ctx);
  return 'aiming';
}

function takeBack(ctx: Ctx): string {
  const { memory } = ctx;
  if (memory.typed !== '') memory.typed = memory.typed.slice(0, -1);
  else if (memory.corners.length < 2) return leave(ctx);
  else if (ctx.undo().ok) memory.corners = memory.corners.slice(0, -1);
  show(ctx);
  return 'aiming';
}

function typedKey(ctx: Ctx, { key }: KeyInput): string | undefined {
  const { memory } = ctx;
  if (/^\d$/.test(key)) memory.typed = (memory.typed + key).replace(/^0+/, '').slice(0, MOST_DIGITS);
  else if (key === 'Backspace') return takeBack(ctx);
  else if (key === 'Enter') return memory.typed === '' ? leave(ctx) : place(ctx);
  else if (key === 'Escape' && memory.typed === '') return leave(ctx);
  else if (key === 'Escape') memory.typed = '';
  else return undefined;
  show(ctx);
  return 'aiming';
}

function move(ctx: Ctx, event: ToolEvent): void {
  aimAt(ctx, event);
  show(ctx);
}

const slid = (ctx: Ctx, event: ToolEvent): boolean =>
  ctx.memory.pressed !== null && apart(ctx.memory.pressed, event.screen) >= SLOP_PX[event.kind];

/** Walls by their middle lines, one to a tap; back on the first corner the room is closed. */
export default defineTool<Memory>({
  id: 'wall',
  label: 'Wall',
  key: 'w',
  order: 40,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move,
      down(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Walls are drawn in the plan.');
          return;
        }
        aimAt(ctx, event);
        ctx.memory.corners = ctx.memory.aim ? [ctx.memory.aim] : [];
        ctx.memory.pressed = event.screen;
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move,
      up(ctx, event) {
        aimAt(ctx, event);
        return slid(ctx, event) ? place(ctx) : 'aiming';
      },
      cancel: leave,
    },
    aiming: {
      move,
      down(ctx, event) {
        const { lastDown } = ctx.memory;
        ctx.memory.lastDown = event;
        const again = lastDown && event.time - lastDown.time < DOUBLE_TAP_MS;
        if (again && apart(lastDown.screen, event.screen) < 2 * SLOP_PX[event.kind]) return leave(ctx);
        ctx.memory.pressed = event.screen;
        move(ctx, event);
        return 'placing';
      },
      key: typedKey,
      changed(ctx) {
        // A corner whose wall was taken back elsewhere is no longer there to go on from.
        const { corners } = ctx.memory;
        const walls = Object.values(ctx.plan.walls);
        const drawn = (p: Xy): boolean => walls.some((w) => distance(w.b, p) < COINCIDENT_MM);
        while (corners.length > 1 && !drawn(corners.at(-1) ?? { x: 0, y: 0 })) corners.pop();
        show(ctx);
        return undefined;
      },
      cancel: leave,
    },
    placing: {
      move,
      up(ctx, event) {
        aimAt(ctx, event);
        return place(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        show(ctx);
        return 'aiming';
      },
    },
  },
});
