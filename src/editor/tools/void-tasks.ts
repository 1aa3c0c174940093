import { wallSide } from '../../geometry/hosting.ts';
import { grid, joistLines } from '../../geometry/joist-lines.ts';
import { add, distance, dot, scale, sub } from '../../geometry/vec.ts';
import type { Joists, Void } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { KeyInput } from '../editor-api.ts';
import { nearestOn } from '../hit/shapes.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import { at3 } from './chain-of-corners.ts';
import type { ToolEvent, ToolStateChart } from './define-tool.ts';
import {
  backToSelect,
  type Ctx,
  chosenVoid,
  joistsShown,
  LIVE_PEN,
  leave,
  type Memory,
  ring3,
  slid,
} from './void-memory.ts';
import { askTask, endTask, taskKey } from './void-task-asks.ts';

/** A joist is caught this many tolerances from its line. */
const REACH = 2;
const STEP_MM = 10;
const MISSING = 'missing';
const BEARINGS = 2;

const reach = (ctx: Ctx, event: ToolEvent): number => TOLERANCE_PX[event.kind] * ctx.mmPerPx * REACH;
const vec = (p: Xy): [number, number] => [p.x, p.y];

function away(a: Xy, b: Xy, p: Xy): number {
  const { at } = nearestOn(vec(a), vec(b), vec(p));
  return Math.hypot(at[0] - p.x, at[1] - p.y);
}

/** Every joist of a void, those that are missing too: a gap can be tapped to be filled again. */
function allJoists(v: Void, joists: Joists) {
  const exceptions = joists.exceptions.map((e) => (e.what === MISSING ? { ...e, what: '' } : e));
  return joistLines({ outline: v.outline, holes: v.holes, joists: { ...joists, exceptions } });
}

export function joistAt(v: Void, p: Xy, withinMm: number): number | null {
  if (!v.joists) return null;
  const near = allJoists(v, v.joists)
    .map(({ index, a, b }) => ({ index, mm: away(a, b, p) }))
    .sort((a, b) => a.mm - b.mm)[0];
  return near && near.mm <= withinMm ? near.index : null;
}

/** How far the hand went across the joists, in the direction they are counted. */
function across(ctx: Ctx, joists: Joists, event: ToolEvent): number {
  const { start } = ctx.memory;
  if (!start || !slid(ctx, event)) return 0;
  const mm = dot(sub(event.floor, start), grid(joists).across);
  return event.alt ? mm : Math.round(mm / STEP_MM) * STEP_MM;
}

function startJoist(ctx: Ctx, event: ToolEvent, v: Void): string | undefined {
  const index = joistAt(v, event.floor, reach(ctx, event));
  if (index === null) {
    ctx.say('Tap a joist of the chosen void.', true);
    return undefined;
  }
  ctx.memory.index = index;
  return 'joist';
}

function faces(ctx: Ctx, v: Void): { a: Xy; b: Xy }[] {
  const walls = Object.values(ctx.plan.walls)
    .filter((w) => w.storey === v.storey)
    .flatMap((w) =>
      (['left', 'right'] as const).map((side) => {
        const { start, along, lengthMm } = wallSide(w, side);
        return { a: start, b: add(start, scale(along, lengthMm)) };
      }),
    );
  const edges = v.outline.map((a, i) => ({ a, b: v.outline[(i + 1) % v.outline.length] ?? a }));
  return [...edges, ...walls];
}

/** Begins what the form asked for: a joist in the hand, the first joist, a bearing. */
export function startTask(ctx: Ctx, event: ToolEvent): string | undefined {
  const v = chosenVoid(ctx);
  if (!v) {
    ctx.say('Choose the void first.', true);
    return backToSelect(ctx);
  }
  ctx.memory.pressed = event.screen;
  ctx.memory.start = event.floor;
  if (ctx.inHand.voidTask === 'joist') return startJoist(ctx, event, v);
  return ctx.inHand.voidTask === 'first' ? 'first' : 'bearing';
}

/** The same task, from its beginning. */
function again(ctx: Ctx): string {
  leave(ctx);
  askTask(ctx);
  return 'idle';
}

const shownOf = (v: Void, joists: Joists) => [
  { pts: ring3(v.outline), ink: 'live', pen: LIVE_PEN },
  ...joistsShown(v.outline, joists),
];

function joistMove(ctx: Ctx, event: ToolEvent): void {
  const v = chosenVoid(ctx);
  const { index } = ctx.memory;
  if (!v?.joists || index === null) return;
  const by = across(ctx, v.joists, event);
  const shift = scale(grid(v.joists).across, by);
  const lines = allJoists(v, v.joists).filter((l) => l.index === index);
  ctx.caught(by === 0 ? null : `moved ${Math.round(by)}`);
  ctx.draft({ lines: lines.map(({ a, b }) => ({ pts: [a, b].map((p) => at3(add(p, shift))), ink: 'live', pen: 1 })) });
}

function joistUp(ctx: Ctx, event: ToolEvent): string {
  const v = chosenVoid(ctx);
  const { index } = ctx.memory;
  if (!v?.joists || index === null) return leave(ctx);
  const by = across(ctx, v.joists, event);
  const was = v.joists.exceptions.find((e) => e.index === index);
  if (by !== 0) {
    const what = was && was.what !== MISSING ? was.what : '';
    ctx.commit('void.joist', { void: v.id, index, change: { offsetMm: (was?.offsetMm ?? 0) + by, what } });
  }
  ctx.setInHand({ joist: { void: v.id, index } });
  again(ctx);
  const now = chosenVoid(ctx);
  const lines = now?.joists ? allJoists(now, now.joists).filter((l) => l.index === index) : [];
  ctx.draft({ lines: lines.map(({ a, b }) => ({ pts: [at3(a), at3(b)], ink: 'live', pen: 1 })) });
  return 'idle';
}

function firstAt(ctx: Ctx, event: ToolEvent, v: Void): Xy {
  const pick = event.snap({ only: ['wallFace', 'wallCorner', 'node', 'grid'] });
  const { x, y } = pick.at;
  ctx.caught(pick.word ?? 'first joist');
  const [corner] = v.outline;
  const { across: way } = v.joists ? grid(v.joists) : { across: { x: 0, y: 1 } };
  return corner ? add(corner, scale(way, dot(sub({ x, y }, corner), way))) : { x, y };
}

function firstMove(ctx: Ctx, event: ToolEvent): void {
  const v = chosenVoid(ctx);
  if (v?.joists) ctx.draft({ lines: shownOf(v, { ...v.joists, first: firstAt(ctx, event, v) }) });
}

function firstUp(ctx: Ctx, event: ToolEvent): string | undefined {
  const v = chosenVoid(ctx);
  if (v?.joists) ctx.commit('void.joists', { void: v.id, change: { first: firstAt(ctx, event, v) } });
  return backToSelect(ctx);
}

/** The line that is drawn, or the face or edge that is tapped. */
function bearingAt(ctx: Ctx, event: ToolEvent, v: Void): { a: Xy; b: Xy } | null {
  const { start } = ctx.memory;
  if (start && slid(ctx, event)) return { a: start, b: event.floor };
  const near = faces(ctx, v)
    .map((line) => ({ line, mm: away(line.a, line.b, event.floor) }))
    .sort((p, q) => p.mm - q.mm || distance(q.line.a, q.line.b) - distance(p.line.a, p.line.b))[0];
  return near && near.mm <= reach(ctx, event) ? near.line : null;
}

function showBearings(ctx: Ctx, aim: { a: Xy; b: Xy } | null): void {
  const lines = [...ctx.memory.bearings, ...(aim ? [aim] : [])];
  ctx.caught(aim ? 'bearing' : null);
  ctx.draft({ lines: lines.map(({ a, b }) => ({ pts: [at3(a), at3(b)], ink: 'live', pen: 1 })) });
}

function setBearings(ctx: Ctx, v: Void): undefined {
  const { bearings } = ctx.memory;
  ctx.commit('void.set', { void: v.id, change: { bearings } });
  return backToSelect(ctx);
}

function bearingUp(ctx: Ctx, event: ToolEvent): string | undefined {
  const v = chosenVoid(ctx);
  const line = v && bearingAt(ctx, event, v);
  if (!v) return backToSelect(ctx);
  if (!line) ctx.say('Tap the wall or beam the joists end on, or draw its line.', true);
  else ctx.memory.bearings = [...ctx.memory.bearings, line];
  if (ctx.memory.bearings.length >= BEARINGS) return setBearings(ctx, v);
  showBearings(ctx, null);
  return 'bearings';
}

function bearingKey(ctx: Ctx, input: KeyInput): string | undefined {
  const v = chosenVoid(ctx);
  if (input.key === 'Enter' && v && ctx.memory.bearings.length > 0) return setBearings(ctx, v);
  return taskKey(ctx, input);
}

/** What is done to the chosen void: a single joist moved, the first one placed, the bearings tapped. */
export const taskStates: Readonly<Record<string, ToolStateChart<Memory>>> = {
  joist: { move: joistMove, up: joistUp, cancel: again },
  first: { move: firstMove, up: firstUp, cancel: again },
  bearing: {
    move(ctx, event) {
      const v = chosenVoid(ctx);
      showBearings(ctx, v ? bearingAt(ctx, event, v) : null);
    },
    up: bearingUp,
    cancel: again,
  },
  bearings: {
    move(ctx, event) {
      const v = chosenVoid(ctx);
      ctx.memory.pressed = null;
      showBearings(ctx, v ? bearingAt(ctx, event, v) : null);
    },
    down(ctx, event) {
      ctx.memory.pressed = event.screen;
      ctx.memory.start = event.floor;
      return 'bearing';
    },
    key: bearingKey,
    interrupt: () => 'bearings',
    cancel: endTask,
  },
};
