import { sub, unit } from '../../geometry/vec.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Ask, KeyInput } from '../editor-api.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import type { SnapOptions } from '../snap/define-snap.ts';
import { laySnap, put, typedCorner, wayOfKey } from '../steps/reroute-corners.ts';
import {
  blankReRoute,
  cornersTo,
  faultOf,
  lastPlace,
  onRunOf,
  partTo,
  planeOf,
  type ReRouteContext,
  type ReRouteMemory,
  reRouteArgs,
  sayLost,
  showReRoute,
  takeHeight,
  withoutPart,
} from '../steps/reroute-hand.ts';
import { defineTool, type ToolEvent } from '../tools/define-tool.ts';

type Ctx = ReRouteContext;
const MOST_DIGITS = 6;
const ON_PIPE = ['connection', 'node', 'leg'];
const FIRST = 'Tap where the part to be laid anew begins.';
const MISSED = 'Tap a pipe: a corner of it, or a place along it.';

const WAYS = [
  { key: 'ahead', label: 'ahead', icon: 'ahead' },
  { key: 'left', label: 'left', icon: 'left' },
  { key: 'right', label: 'right', icon: 'right' },
] as const;
const UPRIGHT = [
  { key: 'up', label: 'up', icon: 'up' },
  { key: 'down', label: 'down', icon: 'down' },
] as const;

function secondAsk(): Ask {
  const says = ['Tap the other end of the part, on the same run.'];
  return { title: 'Re-route', figure: null, unit: '', says, rows: [], enter: null };
}

function layingAsk(ctx: Ctx): Ask {
  const { part, typed } = ctx.memory;
  const fault = faultOf(ctx);
  const lost = part ? sayLost(part) : '';
  const says = ['Tap corners, or type a length and then its way.', lost, fault ?? ''].filter((line) => line !== '');
  return {
    title: 'New way',
    figure: typed,
    unit: 'mm',
    says,
    rows: [WAYS, UPRIGHT],
    enter: fault === null ? 'join' : null,
  };
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blankReRoute());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

function look(ctx: Ctx, event: ToolEvent, options: SnapOptions): void {
  const pick = event.snap(options);
  ctx.memory.aim = pick;
  ctx.caught(pick.word);
}

function join(ctx: Ctx): string {
  const args = reRouteArgs(ctx);
  if (!args) return leave(ctx);
  if (!ctx.commit('run.reroute', args).ok) return 'laying';
  ctx.select([{ map: 'runs', id: args.run }]);
  return leave(ctx);
}

function takeBack(ctx: Ctx): string {
  const { memory } = ctx;
  const last = memory.taps.pop();
  if (memory.typed !== '') {
    memory.typed = memory.typed.slice(0, -1);
    if (last !== undefined) memory.taps.push(last);
  } else if (last !== undefined) memory.corners.splice(-last);
  else {
    Object.assign(memory, { to: null, part: null, bare: null });
    return 'second';
  }
  return 'laying';
}

function layingKey(ctx: Ctx, { key }: KeyInput): string | undefined {
  const { memory } = ctx;
  const next = (() => {
    if (/^\d+$/.test(key)) {
      memory.typed = (memory.typed + key).replace(/^0+/, '').slice(0, MOST_DIGITS);
      return 'laying';
    }
    if (key === 'Backspace') return takeBack(ctx);
    if (key === 'Escape') return leave(ctx);
    const way = wayOfKey(ctx, key);
    if (way) {
      if (memory.typed === '') ctx.say('Type a length first.');
      else typedCorner(ctx, way);
      return 'laying';
    }
    if (key !== 'Enter') return undefined;
    if (memory.typed === '') return join(ctx);
    const from = lastPlace(ctx);
    const to = memory.aim?.at;
    if (from && to && Math.hypot(to.x - from.x, to.y - from.y) > COINCIDENT_MM)
      typedCorner(ctx, { ...unit(sub(to, from)), z: 0 });
    else ctx.say('Tap the way it goes.');
    return 'laying';
  })();
  if (next === 'laying') refresh(ctx);
  return next;
}

function refresh(ctx: Ctx): void {
  showReRoute(ctx);
  ctx.ask(layingAsk(ctx));
}

/** Is the finger on the place the part ends at? */
function onSecond(ctx: Ctx, event: ToolEvent): boolean {
  const to = ctx.memory.part?.line.at(-1);
  const at = to && planeOf(ctx)?.onto(to);
  const reach = TOLERANCE_PX[event.kind] * ctx.mmPerPx;
  return at !== undefined && Math.hypot(at[0] - event.plane[0], at[1] - event.plane[1]) <= reach;
}

function first(ctx: Ctx, event: ToolEvent): string {
  look(ctx, event, { only: ON_PIPE });
  const pick = ctx.memory.aim;
  const found = pick && onRunOf(ctx.plan, pick);
  if (!pick || !found) {
    ctx.say(MISSED);
    return leave(ctx);
  }
  ctx.memory.run = found.run;
  ctx.memory.from = found.place;
  takeHeight(ctx, pick);
  ctx.select([{ map: 'runs', id: found.run }]);
  return 'second';
}

/** What would be lifted if it were tapped here. */
function lookSecond(ctx: Ctx, event: ToolEvent): void {
  look(ctx, event, { only: ON_PIPE });
  const { memory } = ctx;
  const found = memory.aim ? partTo(ctx, memory.aim) : null;
  memory.part = found && 'part' in found ? found.part : null;
  memory.bare = memory.part ? withoutPart(ctx.plan, memory.part) : null;
  if (found && 'why' in found && memory.aim?.target) ctx.caught(found.why);
  showReRoute(ctx);
}

function second(ctx: Ctx, event: ToolEvent): string {
  look(ctx, event, { only: ON_PIPE });
  const { memory } = ctx;
  const found = memory.aim ? partTo(ctx, memory.aim) : { why: FIRST };
  if ('why' in found) {
    ctx.say(found.why);
    return 'second';
  }
  Object.assign(memory, { to: found.to, part: found.part, bare: withoutPart(ctx.plan, found.part), aim: null });
  return 'laying';
}

/** The run was changed from elsewhere: what was lifted may no longer be there. */
function lost(ctx: Ctx): string | undefined {
  const { memory, plan } = ctx;
  const there = [memory.from, memory.to].every((p) => !p || (p.at === 'node' ? plan.nodes[p.node] : plan.legs[p.leg]));
  if (!there) return leave(ctx);
  if (ctx.state.toolState === 'laying') refresh(ctx);
  return undefined;
}

/** Lays one part of a run another way: a tap at each end of it, taps for the new corners, and a tap on the second end. */
export default defineTool<ReRouteMemory>({
  id: 'reroute',
  label: 'Re-route',
  key: 'j',
  order: 38,
  initial: 'idle',
  memory: blankReRoute,
  states: {
    idle: {
      move(ctx, event) {
        look(ctx, event, { only: ON_PIPE });
        showReRoute(ctx);
      },
      down(ctx, event) {
        look(ctx, event, { only: ON_PIPE });
        showReRoute(ctx);
        return 'starting';
      },
      cancel: leave,
    },
    starting: { up: first, cancel: leave },
    second: {
      enter(ctx) {
        ctx.ask(secondAsk());
        showReRoute(ctx);
      },
      move: lookSecond,
      down(ctx, event) {
        lookSecond(ctx, event);
        return 'choosing';
      },
      key: (ctx, { key }) => (key === 'Escape' || key === 'Backspace' ? leave(ctx) : undefined),
      changed: lost,
      cancel: leave,
    },
    choosing: {
      move: lookSecond,
      up: second,
      cancel: leave,
    },
    laying: {
      enter: refresh,
      move(ctx, event) {
        look(ctx, event, laySnap(ctx));
        if (onSecond(ctx, event)) ctx.caught('joins here');
        showReRoute(ctx);
      },
      down(ctx, event) {
        look(ctx, event, laySnap(ctx));
        if (onSecond(ctx, event)) ctx.memory.aim = null;
        showReRoute(ctx);
        return 'placing';
      },
      key: layingKey,
      changed: lost,
      cancel: leave,
    },
    placing: {
      move(ctx, event) {
        look(ctx, event, laySnap(ctx));
        if (onSecond(ctx, event)) ctx.memory.aim = null;
        showReRoute(ctx);
      },
      up(ctx, event) {
        if (onSecond(ctx, event)) return join(ctx);
        look(ctx, event, laySnap(ctx));
        const { aim } = ctx.memory;
        if (aim) put(ctx, cornersTo(ctx, aim.at));
        return 'laying';
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        return 'laying';
      },
    },
  },
});
