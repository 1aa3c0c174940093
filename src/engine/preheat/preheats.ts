import type { Section } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { HEATERS, type Mixer, mixersOf } from '../supply/mixers.ts';
import { inletsOf, pointsOn, type Way, type WayStep, wayTo } from '../supply/way-back.ts';

/** A way past the heater: the mixing valve it goes through, or the outlets it comes to without one. */
export interface PastWay {
  readonly valve: Point | null;
  /** Outlets that get it without a mixing valve. */
  readonly bare: readonly Point[];
}

/** Something that warms water, and what heats it on. */
export interface Preheat {
  readonly vessel: Point;
  /** Null: its water goes to the outlets as it is, or where it goes is not drawn. */
  readonly heater: Point | null;
  /** Mixing and diverting valves from the vessel to the heater, in the order the water meets them. */
  readonly valves: readonly Point[];
  readonly past: PastWay | null;
  /** Pipes from the vessel to the heater. */
  readonly pipes: readonly Section[];
  /** Outlets behind it, showers first. */
  readonly outlets: readonly Mixer[];
  /** The mixing valve every outlet's hot goes through; null where one goes without. */
  readonly outletValve: Point | null;
}

const VALVES = new Set(['mixing-valve', 'diverting-valve']);

/** Steps after the last time a way goes through a point. */
function after(way: Way, point: Point): readonly WayStep[] {
  const at = way.steps.findLastIndex((s) => s.is === 'point' && s.point.id === point.id);
  return way.steps.slice(at + 1);
}
const valvesIn = (steps: readonly WayStep[]): Point[] =>
  steps.flatMap((s) => (s.is === 'point' && VALVES.has(s.point.kind) ? [s.point] : []));

function outletsBehind(given: Given, point: Point): Mixer[] {
  const rank = (m: Mixer): number => (m.point.kind === 'shower-valve' ? 0 : m.point.kind === 'bath-taps' ? 1 : 2);
  return mixersOf(given)
    .filter((m) => m.point.kind !== 'mixing-valve' && pointsOn(m.hot).some((p) => p.id === point.id))
    .sort((a, b) => rank(a) - rank(b));
}

/** What the way past the heater comes to: pipes that join flow together, whoever the trace took for their source. */
function pastOf(given: Given, diverter: Point, through: string): PastWay | null {
  const { kinds } = given.network;
  const other = diverter.connections.find((c) => c.id !== through && kinds.part(diverter, c.id) === 'source');
  const hot = given.traces.find((t) => t.circuit === 'hot');
  if (!other || !hot) return null;
  const rootOf = (vertex: string): string => hot.pathTo(vertex)[0]?.from ?? vertex;
  const root = rootOf(`${diverter.id}/${other.id}`);
  const reached = hot.ends.filter((e) => rootOf(e.vertex) === root).flatMap((e) => given.plan.points[e.point] ?? []);
  return {
    valve: reached.find((p) => p.kind === 'mixing-valve') ?? null,
    bare: reached.filter((p) => p.kind !== 'mixing-valve' && !HEATERS.has(p.kind)),
  };
}

function preheatOf(given: Given, vessel: Point, heater: Point | null, way: Way | null): Preheat {
  const steps = way ? after(way, vessel) : [];
  const diverts = steps.find((s) => s.is === 'point' && s.point.kind === 'diverting-valve');
  const outlets = outletsBehind(given, heater ?? vessel);
  const own = outlets.map(
    (m) => valvesIn(after(m.hot, heater ?? vessel)).find((v) => v.kind === 'mixing-valve') ?? null,
  );
  return {
    vessel,
    heater,
    valves: valvesIn(steps),
    past: diverts?.is === 'point' ? pastOf(given, diverts.point, diverts.outAt) : null,
    pipes: steps.flatMap((s) => (s.is === 'pipe' ? [s.section] : [])),
    outlets,
    outletValve: own.length > 0 && own.every((v) => v !== null) ? (own[0] ?? null) : null,
  };
}

const known = new WeakMap<Given, readonly Preheat[]>();

/** Vessels whose water another heater takes in, and preheat vessels that feed nothing yet. */
export function preheatsOf(given: Given): readonly Preheat[] {
  const kept = known.get(given);
  if (kept) return kept;
  const standing = Object.values(given.plan.points)
    .filter((p) => HEATERS.has(p.kind) && given.network.alive.has('points', p.id))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const fed = standing.flatMap((heater): Preheat[] => {
    const [inlet] = inletsOf(given, heater);
    if (inlet === undefined) return [];
    const way = wayTo(given, heater, inlet);
    const vessel = pointsOn(way).findLast((p) => HEATERS.has(p.kind));
    return vessel && vessel.kind !== 'boiler' ? [preheatOf(given, vessel, heater, way)] : [];
  });
  const taken = new Set(fed.map((p) => p.vessel.id));
  const alone = standing.filter((p) => p.kind === 'preheat-vessel' && !taken.has(p.id));
  const found = [...fed, ...alone.map((vessel) => preheatOf(given, vessel, null, null))];
  known.set(given, found);
  return found;
}

/** Mixing valves that the rules of preheat speak of: nothing else needs to name them again. */
export function preheatValves(given: Given): ReadonlySet<string> {
  return new Set(
    preheatsOf(given).flatMap((p) =>
      [p.past?.valve?.id ?? [], p.outletValve?.id ?? [], p.valves.map((v) => v.id)].flat(),
    ),
  );
}
