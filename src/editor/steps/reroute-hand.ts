import { itemKinds } from '../../catalogue/items.ts';
import { services } from '../../catalogue/services.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import { changedIds, withNeighbours } from '../../network/steps/edit.ts';
import type { LiftedPart, OnRun } from '../../network/steps/lifted-part.ts';
import { partBetween, type ReRoute, reRoute, type Via } from '../../network/steps/re-route.ts';
import { countingIds } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { heightOf, raised } from '../commands/place-arg.ts';
import type { Pick } from '../input/pick.ts';
import { type WorkPlane, workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import type { ToolContext } from '../tools/define-tool.ts';
import { type RouteFrame, routeTo } from '../tools/route-path.ts';

export interface ReRouteMemory {
  run: string | null;
  from: OnRun | null;
  to: OnRun | null;
  part: LiftedPart | null;
  /** The plan without it, and what of it is drawn anew for that. */
  bare: { readonly plan: Plan; readonly moved: ReadonlySet<string> } | null;
  /** Corners so far, and how many each tap made, so that one is taken back whole. */
  corners: { readonly via: Via; readonly at: Xyz }[];
  taps: number[];
  aim: Pick | null;
  typed: string;
}
export type ReRouteContext = ToolContext<ReRouteMemory>;

export const blankReRoute = (): ReRouteMemory => ({
  run: null,
  from: null,
  to: null,
  part: null,
  bare: null,
  corners: [],
  taps: [],
  aim: null,
  typed: '',
});

const LIVE_PEN = 0.8;
const LIFTED_PEN = 0.2;

/** Ids of what is only shown are its own. */
export function shownIds() {
  const ids = countingIds(new Set(), 1);
  return { next: (prefix: string) => ids.next(`shown-${prefix}`) };
}
export const runsDownhill = (service: string): boolean => services.get(service)?.runsDownhill ?? false;

export function planeOf(ctx: ReRouteContext): WorkPlane | undefined {
  const { panes } = ctx.state;
  return workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
}

/** What was caught, as a place on a run. */
export function onRunOf(plan: Plan, pick: Pick): { run: string; place: OnRun } | null {
  const { target } = pick;
  if (target?.is === 'leg') {
    const run = plan.legs[target.leg]?.run;
    return run === undefined ? null : { run, place: { at: 'leg', leg: target.leg, alongMm: target.alongMm } };
  }
  const node = target?.is === 'node' ? target.node : nodeOnTail(plan, pick);
  const leg = node === undefined ? undefined : Object.values(plan.legs).find((l) => l.a === node || l.b === node);
  return node !== undefined && leg ? { run: leg.run, place: { at: 'node', node } } : null;
}

function nodeOnTail(plan: Plan, { target }: Pick): string | undefined {
  if (target?.is !== 'connection') return undefined;
  const { point, connection } = target;
  return Object.values(plan.nodes).find(
    (n) => n.place.on === 'connection' && n.place.point === point && n.place.connection === connection,
  )?.id;
}

/** The part between the first place and this one; what stands in the way is said where there is none. */
export function partTo(ctx: ReRouteContext, pick: Pick): { to: OnRun; part: LiftedPart } | { why: string } {
  const { memory, plan } = ctx;
  const found = onRunOf(plan, pick);
  if (!found || memory.run === null || !memory.from) return { why: 'Tap the other end of the part, on the same run.' };
  const run = found.run === memory.run ? memory.run : sharedRun(plan, memory.run, found.place);
  if (run === null) return { why: 'That is another run. Tap the same one.' };
  const answer = partBetween(plan, run, memory.from, found.place, { ids: shownIds(), runsDownhill });
  return answer.ok ? { to: found.place, part: answer.part } : { why: answer.why };
}

/** A tee belongs to several runs: it is taken as one of the run in hand. */
function sharedRun(plan: Plan, run: string, place: OnRun): string | null {
  if (place.at !== 'node') return null;
  const { node } = place;
  return Object.values(plan.legs).some((l) => l.run === run && (l.a === node || l.b === node)) ? run : null;
}

export function lastPlace({ memory }: ReRouteContext): Xyz | undefined {
  return memory.corners.at(-1)?.at ?? memory.part?.line[0];
}

export function frameOf(ctx: ReRouteContext): RouteFrame | undefined {
  const { plan, state, inHand } = ctx;
  const plane = planeOf(ctx);
  const pane = state.panes[state.panes.active] ?? state.panes.plan;
  const wall = pane.view.kind === 'face' ? plan.walls[pane.view.wall] : undefined;
  return plane && { plan, plane, storey: wall?.storey ?? storeyOf(state.panes), height: inHand.height };
}

/** The new way goes on at the height of the pipe it leaves. */
export function takeHeight(ctx: ReRouteContext, { at, target }: Pick): void {
  const { plan } = ctx;
  const leg = target?.is === 'leg' ? plan.legs[target.leg] : undefined;
  const node = plan.nodes[target?.is === 'node' ? target.node : (leg?.a ?? '')];
  const z = node && nodePlace(plan, node)?.at.z;
  if (node && z !== undefined) ctx.setInHand({ height: raised(heightOf(node), at.z - z) });
}

/** Corners that a tap here makes: over the floor at the height in hand, on a face as far off it as the pipe is. */
export function cornersTo(ctx: ReRouteContext, at: Xyz): { via: Via; at: Xyz }[] {
  const from = lastPlace(ctx);
  const frame = frameOf(ctx);
  if (!from || !frame) return [];
  const { plane } = frame;
  const to =
    plane.kind === 'plan'
      ? { ...at, z: resolveHeight(ctx.plan, frame.height)?.z ?? from.z }
      : plane.place(plane.onto(at), plane.depth(from));
  const { path, pts } = routeTo(frame, from, { at: to, fixed: 'xyz', source: 'free', word: null, target: null });
  return path.flatMap((place, i) => {
    const there = pts[i + 1];
    if (place.at !== 'free' || !there) return [];
    const { storey, x, y, height } = place;
    return [{ via: { storey, x, y, height }, at: there }];
  });
}

/** From the last corner to the second place: a level way and an upright, as any run would end there. */
export function closing(ctx: ReRouteContext): { via: Via; at: Xyz }[] {
  const from = lastPlace(ctx);
  const to = ctx.memory.part?.line.at(-1);
  const frame = frameOf(ctx);
  if (!from || !to || !frame || frame.plane.kind !== 'plan') return [];
  const flat = Math.hypot(to.x - from.x, to.y - from.y);
  if (Math.abs(to.z - from.z) <= COINCIDENT_MM || flat <= COINCIDENT_MM) return [];
  const height: HeightRef = ctx.memory.corners.at(-1)?.via.height ?? ctx.inHand.height;
  const { storey } = frame;
  const at = { x: to.x, y: to.y, z: from.z };
  return distance3(at, to) <= COINCIDENT_MM ? [] : [{ via: { storey, x: to.x, y: to.y, height }, at }];
}

/** The command as it stands. */
export function reRouteArgs(ctx: ReRouteContext): ReRoute | null {
  const { run, from, to, corners } = ctx.memory;
  if (run === null || !from || !to) return null;
  const drains = runsDownhill(ctx.plan.runs[run]?.service ?? '');
  return { run, from, to, path: [...corners, ...(drains ? [] : closing(ctx))].map((c) => c.via) };
}

/** What goes with the part that is lifted, in words; empty where nothing does. */
export function sayLost(part: LiftedPart): string {
  const names = part.items.map((i) =>
    (i.name === '' ? (itemKinds.get(i.kind)?.label ?? i.kind) : i.name).toLowerCase(),
  );
  if (names.length === 0) return '';
  const last = names.at(-1) ?? '';
  const all =
    names.length === 1
      ? `the ${last}`
      : `${names
          .slice(0, -1)
          .map((n) => `the ${n}`)
          .join(', ')} and the ${last}`;
  return `With it goes ${all}: add it again where it is wanted.`;
}

/** The plan with a part of a run lifted out of it. */
export function withoutPart(plan: Plan, part: LiftedPart): { plan: Plan; moved: ReadonlySet<string> } {
  const [legs, nodes, items] = [{ ...part.plan.legs }, { ...part.plan.nodes }, { ...part.plan.items }];
  for (const leg of part.legs) delete legs[leg.id];
  for (const node of part.between) delete nodes[node];
  for (const item of part.items) delete items[item.id];
  const bare = { ...part.plan, legs, nodes, items };
  return { plan: bare, moved: withNeighbours(plan, changedIds(plan, bare)) };
}

const middle = (a: Xyz, b: Xyz): Xyz => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });

/** The lifted part thin, the new way as it would be, its lengths beside it. */
export function showReRoute(ctx: ReRouteContext): void {
  const { memory, plan } = ctx;
  const { part, aim } = memory;
  ctx.typed(memory.typed);
  if (!part) {
    ctx.draft(aim ? { marks: [{ mark: 'aim', at: aim.at }] } : null);
    return;
  }
  const from = lastPlace(ctx);
  const next = aim && !memory.to ? [] : aim ? cornersTo(ctx, aim.at) : [];
  const line = [part.line[0], ...memory.corners.map((c) => c.at), ...next.map((c) => c.at)].flatMap((p) => p ?? []);
  const ink = `service:${services.get(plan.runs[memory.run ?? '']?.service ?? '')?.style ?? ''}`;
  const lengths = line.slice(1).flatMap((to, i) => {
    const at = line[i];
    return at ? [{ at: middle(at, to), text: String(Math.round(distance3(at, to))) }] : [];
  });
  const lines = [
    { pts: part.line, ink: 'ink3', pen: LIFTED_PEN },
    ...(line.length > 1 ? [{ pts: line, ink, pen: LIVE_PEN }] : []),
  ];
  const marks = [from, part.line.at(-1), ...next.map((c) => c.at)].flatMap((at) => (at ? [{ mark: 'aim', at }] : []));
  ctx.draft({ lines, marks, labels: lengths, ...(memory.bare ?? {}) });
}

/** Why it could not be joined as it stands; null where it could. */
export function faultOf(ctx: ReRouteContext): string | null {
  const args = reRouteArgs(ctx);
  if (!args) return null;
  const { chosen } = ctx.state;
  const option = chosen.when === 'after' ? chosen.option : null;
  const answer = reRoute(ctx.plan, args, { ids: shownIds(), runsDownhill, option });
  return answer.ok ? null : answer.why;
}
