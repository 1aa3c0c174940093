import { resolveHeight } from '../../geometry/heights.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { Leg, PlanNode } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM, quantise } from '../../plan/units.ts';
import {
  changedIds,
  fresh,
  type Laid,
  type LayOptions,
  laid,
  NotLaid,
  nodeAt,
  partOf,
  withNeighbours,
} from './edit.ts';
import { isDrain, isUpright } from './falls.ts';
import { type LiftedPart, liftedPart, type OnRun } from './lifted-part.ts';

/** A corner of the new way. */
export interface Via {
  readonly storey: string;
  readonly x: number;
  readonly y: number;
  readonly height: HeightRef;
}

export interface ReRoute {
  readonly run: string;
  readonly from: OnRun;
  readonly to: OnRun;
  readonly path: readonly Via[];
}

export interface ReRouteOptions extends LayOptions {
  /** Option of new pipe. Surveyed pipe that is lifted for one stays as it was, and is marked to strip out. */
  readonly option: string | null;
}

const flat = (a: Xyz, b: Xyz): number => Math.hypot(b.x - a.x, b.y - a.y);

/**
 * Heights of a new way for a pipe that runs downhill: an even fall where the old part had no drop in it; else the fall it
 * had, and what is left of the height as a drop at its lower end. Throws where there is none left.
 */
function falling(part: LiftedPart, corners: readonly Xyz[]): Xyz[] {
  const [first, last] = [part.line[0], part.line.at(-1)];
  if (!first || !last) return [...corners];
  const down = first.z >= last.z;
  const [top, low] = down ? [first, last] : [last, first];
  const line = down ? [...corners] : [...corners].reverse();
  const stops = [top, ...line, low];
  const lengths = stops.slice(1).map((p, i) => flat(stops[i] ?? p, p));
  const whole = lengths.reduce((sum, mm) => sum + mm, 0);
  const inHand = top.z - low.z;
  if (inHand <= COINCIDENT_MM) throw new NotLaid('There is no fall between these two places: set their heights first.');
  const old = part.line.slice(1).map((p, i) => [part.line[i] ?? p, p] as const);
  const drops = old.some(([p, q]) => isUpright(p, q));
  const falls = old.filter(([p, q]) => !isUpright(p, q)).map(([p, q]) => Math.abs(p.z - q.z) / flat(p, q));
  const even = inHand / Math.max(whole, 1);
  const perMm = drops && falls.length > 0 ? Math.min(even, Math.min(...falls)) : even;
  let done = 0;
  const placed = line.map((p, i) => {
    done += lengths[i] ?? 0;
    return { ...p, z: top.z - perMm * done };
  });
  const over = top.z - perMm * whole;
  if (over - low.z > COINCIDENT_MM && whole > COINCIDENT_MM) placed.push({ ...low, z: over });
  return down ? placed : placed.reverse();
}

/** Corners of the new way in space, both ends left out; where the told height stands it is kept as it was told. */
function cornersOf(plan: Plan, part: LiftedPart, { path }: ReRoute, drains: boolean) {
  const told = path.map((via): Xyz => {
    if (!plan.storeys[via.storey]) throw new NotLaid('That floor is no longer there.');
    const z = resolveHeight(plan, via.height)?.z;
    if (z === undefined) throw new NotLaid('That height is told from something that has none itself.');
    return { x: quantise(via.x), y: quantise(via.y), z };
  });
  const fallen = drains ? falling(part, told) : told;
  return fallen.map((at, i) => ({ at, via: !drains ? path[i] : undefined }));
}

/** One leg of the new way: the old one in its place in the row is taken again, with its size and all that was said of it. */
function legFor(part: LiftedPart, i: number, last: number): Leg {
  const { legs } = part;
  const at = i === last && i > 0 ? legs.length - 1 : Math.min(i, Math.max(legs.length - 2, 0));
  const leg = legs[at];
  if (!leg) throw new NotLaid('Nothing lies between these two places.');
  return leg;
}

/** Surveyed legs that a new way takes the place of are marked to strip out; the rest are taken away with their corners. */
function lift(part: LiftedPart, options: ReRouteOptions): { plan: Plan; kept: boolean } {
  const { plan, legs, between } = part;
  const option = options.option === null ? undefined : plan.options[options.option];
  const surveyed = legs.filter((l) => l.option === null);
  if (option && surveyed.length > 0) {
    if (surveyed.length < legs.length)
      throw new NotLaid('Part of that was there and part is new. Re-route the one and then the other.');
    const gone = [...legs, ...part.items].map((r) => [r.id, 'strip'] as const);
    const fates = { ...option.fates, ...Object.fromEntries(gone) };
    return { plan: { ...plan, options: { ...plan.options, [option.id]: { ...option, fates } } }, kept: true };
  }
  const without = <T>(map: Readonly<Record<string, T>>, ids: readonly string[]): Record<string, T> => {
    const copy = { ...map };
    for (const id of ids) delete copy[id];
    return copy;
  };
  return {
    kept: false,
    plan: {
      ...plan,
      nodes: without(plan.nodes, between),
      legs: without(
        plan.legs,
        legs.map((l) => l.id),
      ),
      items: without(
        plan.items,
        part.items.map((i) => i.id),
      ),
    },
  };
}

function mustHaveLength(stops: readonly Xyz[]): void {
  for (const [i, p] of stops.entries()) {
    const before = stops[i - 1];
    if (before && distance3(before, p) <= COINCIDENT_MM)
      throw new NotLaid('Two corners of the new way lie on one place.');
  }
}

function reRouted(plan: Plan, how: ReRoute, options: ReRouteOptions): Plan {
  const { ids } = options;
  if (!plan.runs[how.run]) throw new NotLaid('That run is no longer there.');
  const part = liftedPart(plan, how.run, how.from, how.to, ids);
  const [first] = part.legs;
  if (!first) throw new NotLaid('Nothing lies between these two places.');
  const corners = cornersOf(part.plan, part, how, isDrain(plan, first, options.runsDownhill));
  const ends = [part.line[0], part.line.at(-1)].flatMap((p) => p ?? []);
  mustHaveLength([...ends.slice(0, 1), ...corners.map((c) => c.at), ...ends.slice(1)]);
  const { plan: bare, kept } = lift(part, options);
  const nodes = { ...bare.nodes };
  const legs = { ...bare.legs };
  const items = { ...bare.items };
  const next: Plan = { ...bare, nodes, legs, items };
  const storey = how.path[0]?.storey ?? storeyOf(part.plan, part.from);
  const stops = [part.from];
  for (const [i, { at, via }] of corners.entries()) {
    const old = kept ? undefined : part.between[i];
    const id = old ?? fresh(next, ids, 'n');
    const turn = (old !== undefined && part.plan.nodes[old]?.turn) || null;
    const option = kept ? options.option : first.option;
    const record: PlanNode = via
      ? { id, place: { on: 'storey', storey: via.storey, x: at.x, y: at.y, height: { ...via.height } }, turn, option }
      : { ...nodeAt(part.plan, id, part.from, storey, at, option), turn };
    nodes[id] = record;
    stops.push(id);
  }
  stops.push(part.to);
  const used = new Set<string>();
  const last = stops.length - 2;
  const row = stops.slice(1).map((to, i) => {
    const from = stops[i] ?? part.from;
    const leg = legFor(part, i, last);
    const again = !kept && !used.has(leg.id);
    const id = again ? leg.id : fresh(next, ids, 'l');
    used.add(leg.id);
    const [a, b] = drawnForward(part, leg) ? [from, to] : [to, from];
    legs[id] = { ...partOf(leg, id, a, b), ...(kept ? { option: options.option, sureness: 'seen' } : {}) };
    return id;
  });
  const lifted = new Set(part.legs.map((l) => l.id));
  for (const item of Object.values(items)) {
    if (item.along === null || !lifted.has(item.along) || legs[item.along] === part.plan.legs[item.along]) continue;
    const now = item.node === part.from ? row[0] : item.node === part.to ? row.at(-1) : undefined;
    items[item.id] = { ...item, along: now ?? null };
  }
  return next;
}

function storeyOf(plan: Plan, node: string): string {
  const place = plan.nodes[node]?.place;
  return place?.on === 'storey' ? place.storey : (plan.points[place?.point ?? '']?.storey ?? '');
}

/** Was a leg drawn the way the part is walked? Runs are told from source to end, and stay so. */
function drawnForward(part: LiftedPart, leg: Leg): boolean {
  const order = [part.from, ...part.between, part.to];
  return order.indexOf(leg.a) < order.indexOf(leg.b);
}

/**
 * Lays one part of a run another way. The rest of it, its ends, tails, ids and what was said of it stay; items between the
 * two places go with the old way. Refused in words where a branch leaves the part, or water could not run.
 */
export function reRoute(plan: Plan, how: ReRoute, options: ReRouteOptions): Laid {
  return laid(() => {
    const next = reRouted(plan, how, options);
    return { plan: next, touched: withNeighbours(plan, changedIds(plan, next)) };
  });
}

/** The part two places of a run take, for showing it before it is laid anew; or why there is none. */
export function partBetween(
  plan: Plan,
  run: string,
  from: OnRun,
  to: OnRun,
  options: LayOptions,
): { readonly ok: true; readonly part: LiftedPart } | { readonly ok: false; readonly why: string } {
  try {
    return { ok: true, part: liftedPart(plan, run, from, to, options.ids) };
  } catch (cause) {
    if (cause instanceof NotLaid) return { ok: false, why: cause.message };
    throw cause;
  }
}
