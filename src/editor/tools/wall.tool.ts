import { distance } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { KeyInput } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { storeyOf } from '../panes.ts';
import { aimChain } from './chain-of-corners.ts';
import { defineTool, type ToolEvent } from './define-tool.ts';
import { sizesOf, turnOf } from './wall-ask.ts';
import { asLaid, closingError, layChain } from './wall-chain.ts';
import { closeWith, keepUp, layWalls, type WallEnd } from './wall-commit.ts';
import { showWall } from './wall-show.ts';
import { aimed, begin, blankWall, typedWall, usualTurn, type WallCtx, type WallMemory } from './wall-steps.ts';

const ONLY = ['wallCorner', 'rightAngle', 'wallFace', 'wallCentreline', 'alignment', 'grid'];
const DOUBLE_TAP_MS = 400;
const MOST_DIGITS = 6;
const MOST_ANGLE = 3;

/** Walls join by their middle lines: the corner of a body means the end of the wall it is of. */
function aimAt(ctx: WallCtx, event: ToolEvent): void {
  aimChain(ctx, event, ONLY, 'closes the room');
  const { memory, plan, state } = ctx;
  const { aim } = memory;
  if (!aim || memory.word !== 'corner of wall') return;
  const ends = Object.values(plan.walls)
    .filter((w) => w.storey === storeyOf(state.panes))
    .flatMap((w) => [w.a, w.b].map((at) => ({ at, off: distance(at, aim), reach: w.thicknessMm })))
    .filter(({ off, reach }) => off <= reach)
    .sort((p, q) => p.off - q.off);
  const [nearest] = ends;
  if (nearest) Object.assign(memory, { aim: { x: nearest.at.x, y: nearest.at.y }, word: 'end of wall' });
}

function leave(ctx: WallCtx): string {
  Object.assign(ctx.memory, blankWall());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

const goOn = (ctx: WallCtx, end: WallEnd): string => {
  if (end === 'closed') return leave(ctx);
  showWall(ctx);
  return 'aiming';
};

/** Under the pointer: the walls before it stay as they lie, and this one ends where the hand is. */
function placeAimed(ctx: WallCtx): string {
  const { memory, inHand } = ctx;
  const to = aimed(memory);
  const from = memory.corners.at(-1);
  if (!memory.chain || !to || !from) return 'aiming';
  const told = { turnDeg: 0, mm: distance(from, to), sizes: 'middle', thicknessMm: inHand.wallThicknessMm } as const;
  const corners = [...memory.corners, to];
  const chain = asLaid({ ...memory.chain, walls: [...memory.chain.walls, told] }, corners);
  return goOn(ctx, layWalls(ctx, chain, corners, to === memory.corners[0] ? 'close' : 'draw'));
}

/** Of a typed length. One that comes back to the first corner to a hair closes the chain. */
function placeTyped(ctx: WallCtx): string {
  const chain = typedWall(ctx);
  if (!chain) return 'aiming';
  const whole = layChain(chain, true);
  const error = chain.walls.length > 2 ? closingError(whole) : undefined;
  const [first] = whole;
  if (error && first && error.mm < COINCIDENT_MM) {
    return goOn(ctx, layWalls(ctx, chain, [...whole.slice(0, -1), first], 'close'));
  }
  return goOn(ctx, layWalls(ctx, chain, layChain(chain), 'draw'));
}

const place = (ctx: WallCtx): string => (ctx.memory.typed === '' ? placeAimed(ctx) : placeTyped(ctx));

function takeBack(ctx: WallCtx): string {
  const { memory } = ctx;
  if (memory.angle) memory.angle = memory.angle.slice(0, -1);
  else if (memory.angle !== null) memory.angle = null;
  else if (memory.typed !== '') memory.typed = memory.typed.slice(0, -1);
  else if (memory.turnDeg !== null) memory.turnDeg = null;
  else if (memory.corners.length < 2) return leave(ctx);
  else if (ctx.undo().ok && !keepUp(ctx)) return leave(ctx);
  showWall(ctx);
  return 'aiming';
}

/** An own angle is typed first and then turned to a side; without one the turn is square. */
function turn(ctx: WallCtx, turnDeg: number): void {
  const { memory } = ctx;
  const own = memory.angle === null || memory.angle === '' ? null : Number(memory.angle);
  memory.turnDeg = own === null ? turnDeg : Math.sign(turnDeg) * own;
  memory.angle = null;
}

function digits(memory: WallMemory, key: string): void {
  const cut = (now: string, most: number): string => (now + key).replace(/^0+/, '').slice(0, most);
  if (memory.angle !== null) memory.angle = cut(memory.angle, MOST_ANGLE);
  else memory.typed = cut(memory.typed, MOST_DIGITS);
}

function repeat(ctx: WallCtx): string {
  const { memory } = ctx;
  const last = memory.chain?.walls.at(-1);
  if (!last || !memory.chain) return 'aiming';
  ctx.setInHand({ sizes: last.sizes });
  memory.typed = String(Math.round(last.mm * 10) / 10);
  memory.turnDeg ??= usualTurn(memory.chain);
  return placeTyped(ctx);
}

function typedKey(ctx: WallCtx, { key }: KeyInput): string | undefined {
  const { memory } = ctx;
  const turnDeg = turnOf(key);
  const sizes = sizesOf(key);
  if (/^\d+$/.test(key)) digits(memory, key);
  else if (turnDeg !== undefined) turn(ctx, turnDeg);
  else if (sizes) ctx.setInHand({ sizes });
  else if (key === 'angle') memory.angle = memory.angle === null ? '' : null;
  else if (key === 'repeat') return repeat(ctx);
  else if (key === 'spread' || key === 'lastTakes' || key === 'close') return goOn(ctx, closeWith(ctx, key));
  else if (key === 'Backspace') return takeBack(ctx);
  else if (key === 'Enter') return memory.typed === '' ? leave(ctx) : place(ctx);
  else if (key !== 'Escape') return undefined;
  else if (memory.typed === '' && memory.angle === null) return leave(ctx);
  else Object.assign(memory, { typed: '', angle: null });
  showWall(ctx);
  return 'aiming';
}

function move(ctx: WallCtx, event: ToolEvent): void {
  aimAt(ctx, event);
  showWall(ctx);
}

const slid = (ctx: WallCtx, event: ToolEvent): boolean =>
  ctx.memory.pressed !== null && apart(ctx.memory.pressed, event.screen) >= SLOP_PX[event.kind];

const startAt = (ctx: WallCtx, at: Xy): void => {
  begin(ctx, at);
  showWall(ctx);
};

/**
 * Walls one after the other: by their middle lines where they are tapped, by told turns and lengths where they are typed.
 * Back on the first corner the room is closed; a closing error may be spread over all of them.
 */
export default defineTool<WallMemory>({
  id: 'wall',
  label: 'Wall',
  key: 'w',
  order: 40,
  initial: 'idle',
  memory: blankWall,
  states: {
    idle: {
      move,
      down(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Walls are drawn in the plan.');
          return;
        }
        aimAt(ctx, event);
        if (!ctx.memory.aim) return;
        begin(ctx, ctx.memory.aim);
        ctx.memory.pressed = event.screen;
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move,
      up(ctx, event) {
        aimAt(ctx, event);
        if (slid(ctx, event)) return placeAimed(ctx);
        const [start] = ctx.memory.corners;
        ctx.memory.aim = null;
        if (start) startAt(ctx, start);
        return 'aiming';
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
        ctx.memory.turnDeg = null;
        move(ctx, event);
        return 'placing';
      },
      key: typedKey,
      changed(ctx) {
        if (!keepUp(ctx)) return leave(ctx);
        showWall(ctx);
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
        showWall(ctx);
        return 'aiming';
      },
    },
  },
});
