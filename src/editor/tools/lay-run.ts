import { partOf } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { legsAt, servicesAt } from '../commands/legs-at.ts';
import { heightOf, raised } from '../commands/place-arg.ts';
import type { KeyInput, Outcome } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import type { Pick } from '../input/pick.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { sameValue } from '../same-value.ts';
import type { SnapOptions } from '../snap/define-snap.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';
import {
  aimed,
  emptyRunMemory,
  frameOf,
  holdEnd,
  lastPlace,
  type RunMemory,
  routeOf,
  showRun,
  wayOf,
} from './live-run.ts';
import { placeOfPick } from './route-path.ts';

type Ctx = ToolContext<RunMemory>;
const DOUBLE_TAP_MS = 400;
const MOST_DIGITS = 6;

function forget(ctx: Ctx): void {
  const { lent } = ctx.memory;
  if (lent && sameValue(ctx.inHand.height, lent.own)) ctx.setInHand({ height: lent.before });
  Object.assign(ctx.memory, emptyRunMemory());
  holdEnd(ctx, null);
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
}

export function options(ctx: Ctx): SnapOptions {
  const { memory, plan } = ctx;
  const from = lastPlace(ctx);
  const end = memory.ends.at(-1);
  const { plane } = frameOf(ctx);
  const way = wayOf(ctx);
  const own = end === undefined ? [] : [end, ...legsAt(plan, end).map((l) => l.id)];
  return {
    service: ctx.inHand.service,
    without: new Set(own),
    ...(from ? { from, earlier: memory.start ? [memory.start.at] : [] } : {}),
    ...(way ? { way } : {}),
    ...(from && plane.kind === 'face' ? { depth: plane.depth(from) } : {}),
  };
}

/** The service of what the first tap caught goes into the hand: a tail knows what it is for. */
function takeService(ctx: Ctx, pick: Pick): void {
  const { target } = pick;
  const service =
    target?.is === 'connection'
      ? target.service
      : target?.is === 'leg'
        ? ctx.plan.runs[ctx.plan.legs[target.leg]?.run ?? '']?.service
        : target?.is === 'node'
          ? [...servicesAt(ctx.plan, target.node)][0]
          : undefined;
  if (service !== undefined && service !== ctx.inHand.service) ctx.setInHand({ service });
}

/** What runs down from a tail turns just under it: from the height in hand it might have to climb to its end again. */
function takeDrainHeight(ctx: Ctx, target: Pick['target']): boolean {
  if (target?.is !== 'connection') return false;
  const { point, connection, service } = target;
  const under = ctx.assumptions.underTailMm?.[service];
  const from = ctx.plan.points[point];
  if (under === undefined || !from || partOf(from, connection) !== 'source') return false;
  const own: HeightRef = { from: 'connection', of: point, mm: -under, connection };
  ctx.memory.lent = { before: ctx.inHand.height, own };
  ctx.setInHand({ height: own });
  return true;
}

/** A run that starts on a pipe goes on at the height of that pipe; from a tail it goes to the height in hand, but for a drain. */
function takeHeight(ctx: Ctx, { at, target }: Pick): void {
  if (takeDrainHeight(ctx, target)) return;
  const { plan } = ctx;
  const leg = target?.is === 'leg' ? plan.legs[target.leg] : undefined;
  const node = plan.nodes[target?.is === 'node' ? target.node : (leg?.a ?? '')];
  const z = node && nodePlace(plan, node)?.at.z;
  if (node && z !== undefined) ctx.setInHand({ height: raised(heightOf(node), at.z - z) });
}

/** The first tap on an open end goes on with that run. */
export function begin(ctx: Ctx, pick: Pick): void {
  const { memory, plan } = ctx;
  memory.start = pick;
  takeService(ctx, pick);
  takeHeight(ctx, pick);
  if (pick.target?.is !== 'node') return;
  const [only, another] = legsAt(plan, pick.target.node);
  const run = only && plan.runs[only.run];
  if (!run || another) return;
  memory.run = run.id;
  memory.ends = [pick.target.node];
  ctx.setInHand({ service: run.service, tube: only.tube, joining: run.joining, turns: run.turns });
}

/** An end that was put in hand from outside, as when the page was left in mid-run: the run goes on from it. */
export function takeEnd(ctx: Ctx): string | undefined {
  const { plan, inHand, memory } = ctx;
  const end = inHand.goesOn;
  if (end === null) return undefined;
  const [only, another] = plan.nodes[end] ? legsAt(plan, end) : [];
  const run = only && plan.runs[only.run];
  if (!run || another || run.service !== inHand.service) {
    holdEnd(ctx, null);
    return undefined;
  }
  memory.run = run.id;
  memory.ends = [end];
  ctx.say(`${services.get(run.service)?.label ?? run.service} run goes on: tap its end or the next corner.`);
  showRun(ctx);
  return 'aiming';
}

function commit(ctx: Ctx): Outcome | null {
  const { memory, inHand } = ctx;
  const route = routeOf(ctx);
  const pick = aimed(ctx);
  if (!route || !pick || route.path.length === 0) return null;
  const { service, tube, joining, turns } = inHand;
  const end = memory.ends.at(-1);
  const path = [...route.path];
  if (memory.run === null || end === undefined) {
    if (!memory.start) return null;
    const start = route.start ?? placeOfPick({ ...frameOf(ctx) }, memory.start);
    return ctx.commit('run.start', { service, joining, turns, tube, path: [start, ...path] });
  }
  const ends = pick.target !== null && pick.target.is !== 'wall';
  return ctx.commit(ends ? 'run.finish' : 'run.extend', { run: memory.run, from: end, tube, path });
}

/** One placed node: one step. Gives the next state. */
export function place(ctx: Ctx): string {
  const { memory } = ctx;
  const target = aimed(ctx)?.target ?? null;
  const outcome = commit(ctx);
  if (!outcome?.ok) return 'aiming';
  if (memory.run === null) memory.run = outcome.made[0] ?? null;
  const end = outcome.made.at(-1);
  if (end !== undefined) memory.ends = [...memory.ends, end];
  memory.typed = '';
  if (target && target.is !== 'wall') {
    forget(ctx);
    return 'idle';
  }
  memory.aim = null;
  showRun(ctx);
  return 'aiming';
}

/** Same place twice in a moment: the run is kept as it is, its end open. */
export function isSecondTap(ctx: Ctx, event: ToolEvent): boolean {
  const last = ctx.memory.lastTap;
  ctx.memory.lastTap = { screen: event.screen, time: event.time };
  return (
    last !== null &&
    event.time - last.time < DOUBLE_TAP_MS &&
    apart(last.screen, event.screen) < 2 * SLOP_PX[event.kind]
  );
}

function takeBack(ctx: Ctx): string {
  const { memory } = ctx;
  if (memory.typed !== '') memory.typed = memory.typed.slice(0, -1);
  else if (memory.ends.length > 0 && memory.run !== null && ctx.undo().ok) {
    memory.ends = memory.ends.slice(0, -1);
    if (!ctx.plan.runs[memory.run]) memory.run = null;
    if (memory.ends.length === 0 && memory.start === null) return leave(ctx);
  }
  showRun(ctx);
  return 'aiming';
}

export function leave(ctx: Ctx): string {
  forget(ctx);
  return 'idle';
}

export function typedKey(ctx: Ctx, key: KeyInput): string | undefined {
  const { memory } = ctx;
  if (/^\d$/.test(key.key)) {
    memory.typed = (memory.typed + key.key).replace(/^0+/, '').slice(0, MOST_DIGITS);
    showRun(ctx);
    return 'aiming';
  }
  if (key.key === 'Backspace') return takeBack(ctx);
  if (key.key === 'Enter') return memory.typed === '' ? leave(ctx) : place(ctx);
  if (key.key === 'Escape') {
    if (memory.typed === '') return leave(ctx);
    memory.typed = '';
    showRun(ctx);
    return 'aiming';
  }
  return undefined;
}

/** Does what is laid belong to another service than the one that has been taken in hand since? */
function isOfAnother({ memory, plan, inHand }: Ctx): boolean {
  const target = memory.start?.target;
  const service =
    memory.run !== null ? plan.runs[memory.run]?.service : target?.is === 'connection' ? target.service : undefined;
  return service !== undefined && service !== inHand.service;
}

/** Steps taken back elsewhere take the ends with them. Another service in hand ends the run: the next tap begins one of it. */
export function catchUp(ctx: Ctx): string | undefined {
  const { memory, plan } = ctx;
  if (memory.run !== null) {
    memory.ends = memory.ends.filter((id) => plan.nodes[id]);
    if (!plan.runs[memory.run]) memory.run = null;
    if (memory.run === null) return leave(ctx);
  }
  if (isOfAnother(ctx)) return leave(ctx);
  showRun(ctx);
  return undefined;
}

export const moved = (ctx: Ctx, event: ToolEvent): boolean =>
  ctx.memory.pressed !== null && apart(ctx.memory.pressed, event.screen) >= SLOP_PX[event.kind];
