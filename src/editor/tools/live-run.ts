import { services } from '../../catalogue/services.ts';
import type { Vec } from '../../drawing/display-list.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { connectionPlace, hostedXy } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import { legsAt, otherEnd } from '../commands/legs-at.ts';
import type { Pick } from '../input/pick.ts';
import { type WorkPlane, wayAsSeen, workPlane } from '../input/work-plane.ts';
import type { ToolContext } from './define-tool.ts';
import { lateHand } from './late-hand.ts';
import { type Route, type RouteFrame, routeTo } from './route-path.ts';

/** What the run tool remembers between events. Nothing of it is in the document. */
export interface RunMemory {
  /** First place, before there is a run. */
  start: Pick | null;
  run: string | null;
  /** Ends of the run after each step, the newest last. */
  ends: string[];
  aim: Pick | null;
  typed: string;
  pressed: Vec | null;
  lastTap: { readonly screen: Vec; readonly time: number } | null;
  /** Height that was in hand before a drain took its own, and the one it took. */
  lent: { readonly before: HeightRef; readonly own: HeightRef } | null;
}

export const emptyRunMemory = (): RunMemory => ({
  start: null,
  run: null,
  ends: [],
  aim: null,
  typed: '',
  pressed: null,
  lastTap: null,
  lent: null,
});

const FRAME_LEAST_MM = 1;
/** Pen of a pipe that is being drawn, paper mm. */
const LIVE_PEN = 0.8;

export function frameOf(ctx: ToolContext<RunMemory>): RouteFrame {
  const { plan, state } = ctx;
  const pane = state.panes[state.panes.active] ?? state.panes.plan;
  const above = { kind: 'plan', storey: '' } as const;
  const plane = workPlane(plan, pane.view) ?? workPlane(plan, above);
  if (!plane) throw new Error('a plan can always be seen from above');
  const { view } = pane;
  const storey = view.kind === 'plan' ? view.storey : (plan.walls[view.wall]?.storey ?? '');
  return { plan, plane, storey, height: ctx.inHand.height };
}

export function lastPlace(ctx: ToolContext<RunMemory>): Xyz | undefined {
  const end = ctx.memory.ends.at(-1);
  const node = end === undefined ? undefined : ctx.plan.nodes[end];
  return node ? nodePlace(ctx.plan, node)?.at : ctx.memory.start?.at;
}

function unitOn(from: Vec, to: Vec): Vec | undefined {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const l = Math.hypot(x, y);
  return l < FRAME_LEAST_MM ? undefined : [x / l, y / l];
}

function wayOfTail(plan: Plan, point: string, connection: string, plane: WorkPlane): Vec | undefined {
  const place = connectionPlace(plan, point, connection);
  if (!place) return undefined;
  const { at, facing } = place;
  const along = unitOn(
    plane.onto(at),
    plane.onto({ x: at.x + facing.x * 9, y: at.y + facing.y * 9, z: at.z + facing.z * 9 }),
  );
  const host = plan.points[point]?.place;
  const wall = host?.on === 'wall' ? hostedXy(plan, host) : undefined;
  return along ?? (wall && unitOn([0, 0], wayAsSeen(plane, wall.right)));
}

/** Way of the leg that leads to the last place, or of what the run starts on, in the plane of the view. */
export function wayOf(ctx: ToolContext<RunMemory>): Vec | undefined {
  const { plan, memory } = ctx;
  const { plane } = frameOf(ctx);
  const end = memory.ends.at(-1);
  if (end === undefined) {
    const target = memory.start?.target;
    return target?.is === 'connection' ? wayOfTail(plan, target.point, target.connection, plane) : undefined;
  }
  const here = plan.nodes[end];
  const at = here && nodePlace(plan, here)?.at;
  const leg = legsAt(plan, end).find((l) => l.run === memory.run);
  const before = leg && plan.nodes[otherEnd(leg, end)];
  const from = before && nodePlace(plan, before)?.at;
  return at && from ? unitOn(plane.onto(from), plane.onto(at)) : undefined;
}

/** The pick with the typed length along the way the pointer shows. */
export function aimed(ctx: ToolContext<RunMemory>): Pick | null {
  const { aim, typed } = ctx.memory;
  if (!aim) return null;
  const frame = frameOf(ctx);
  const from = lastPlace(ctx);
  const level = frame.plane.kind === 'plan' && !aim.target ? routeTo(frame, aim.at, aim) : null;
  const at = level?.pts.at(-1) ?? aim.at;
  if (typed === '' || !from) return { ...aim, at };
  const way = unitOn(frame.plane.onto(from), frame.plane.onto(at));
  if (!way) return { ...aim, at };
  const [s, t] = frame.plane.onto(from);
  const mm = Number(typed);
  const depth = frame.plane.depth(frame.plane.kind === 'plan' ? at : from);
  const place = frame.plane.place([s + way[0] * mm, t + way[1] * mm], depth);
  return { at: place, fixed: aim.fixed, source: 'typed', word: `${typed} long`, target: null };
}

export function routeOf(ctx: ToolContext<RunMemory>): Route | null {
  const from = lastPlace(ctx);
  const pick = aimed(ctx);
  if (!from || !pick) return null;
  const frame = frameOf(ctx);
  const { run, start } = ctx.memory;
  const loose = run === null && (!start?.target || start.target.is === 'wall');
  return lateHand.is?.routeAlong(ctx, frame, run, loose, from, pick) ?? routeTo(frame, from, pick);
}

const middle = (a: Xyz, b: Xyz): Xyz => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });

/** In plan an upright is a ring: a dot where it comes up, a slant where it goes down. */
function uprights(ctx: ToolContext<RunMemory>, pts: readonly Xyz[]) {
  const { plane } = frameOf(ctx);
  if (plane.kind !== 'plan') return [];
  return pts.slice(1).flatMap((to, i) => {
    const from = pts[i];
    if (!from || unitOn([from.x, from.y], [to.x, to.y])) return [];
    return [{ mark: to.z > from.z ? 'rise' : 'drop', at: to }];
  });
}

/** What is in hand says which end it is that goes on. */
export function holdEnd(ctx: ToolContext<RunMemory>, end: string | null): void {
  if (ctx.inHand.goesOn !== end) ctx.setInHand({ goesOn: end });
}

/** Shows the live leg with its lengths, or only the place that is caught while nothing has been started. */
export function showRun(ctx: ToolContext<RunMemory>): void {
  holdEnd(ctx, ctx.memory.ends.at(-1) ?? null);
  const { aim } = ctx.memory;
  const route = routeOf(ctx);
  ctx.caught(route?.word ?? aimed(ctx)?.word ?? null);
  ctx.typed(ctx.memory.typed);
  const pts = route?.pts ?? risenEnd(ctx);
  if (!pts) {
    ctx.draft(aim ? { marks: [{ mark: 'aim', at: aim.at }] } : null);
    return;
  }
  const last = route?.pts.at(-1);
  const ink = `service:${services.get(ctx.inHand.service)?.style ?? ctx.inHand.service}`;
  ctx.draft({
    lines: [{ pts, ink, pen: LIVE_PEN }],
    marks: [...uprights(ctx, pts), ...(last ? [{ mark: 'aim', at: last }] : [])],
    labels: lengths(ctx, pts),
  });
}

/** The upright at the end of a run that a new height in hand will draw before the next place; shown from above only. */
function risenEnd(ctx: ToolContext<RunMemory>): readonly Xyz[] | null {
  const from = lastPlace(ctx);
  const { plane, height } = frameOf(ctx);
  const z = resolveHeight(ctx.plan, height)?.z;
  if (!from || ctx.memory.aim !== null || plane.kind !== 'plan' || z === undefined) return null;
  return Math.abs(z - from.z) < FRAME_LEAST_MM ? null : [from, { ...from, z }];
}

/** Length of each piece; from above, which way an upright goes is said too. */
function lengths(ctx: ToolContext<RunMemory>, pts: readonly Xyz[]) {
  const { plane } = frameOf(ctx);
  return pts.slice(1).flatMap((to, i) => {
    const from = pts[i];
    if (!from) return [];
    const mm = Math.round(distance3(from, to));
    const upright = plane.kind === 'plan' && !unitOn([from.x, from.y], [to.x, to.y]);
    return [{ at: middle(from, to), text: upright ? `${to.z > from.z ? 'up' : 'down'} ${mm}` : String(mm) }];
  });
}
