import type { Network } from '../../network/network.ts';
import type { Section, Trace, TraceEnd } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import { sayPoint } from '../say-names.ts';

/** Something that takes heat: a radiator, a coil, or what lies behind tails and joins nobody drew further. */
export interface HeatLoad {
  /** Vertex where the flow arrives. */
  readonly id: string;
  readonly point: string;
  readonly name: string;
  readonly kind: string;
  /** Null where nobody told. */
  readonly kW: Quantity | null;
  /** The branch of zone valves it hangs on; those may be open by turns. */
  readonly zone: string | null;
  /** Ends of the pipes the flow goes through to it, first from the boiler, the load's own last. */
  readonly via: readonly string[];
  /** Where its return starts; null where none is drawn, or which one it is cannot be told. */
  readonly back: string | null;
}

export interface Loads {
  /** Of each flow source, the boiler or a branch of valves. */
  readonly from: (source: string) => readonly HeatLoad[];
  /** What is carried by a pipe that ends at this flow end. */
  readonly at: (end: string) => readonly HeatLoad[];
  /** What comes back at a return source; null where that cannot be told. */
  readonly backAt: (source: string) => readonly HeatLoad[] | null;
}

const KW_FIELDS = ['outputKw', 'heatingKw', 'coilKw'] as const;

/** What a point takes, kW; null where not told. A range told is kept as one. */
export function heatOf(point: Point): Quantity | null {
  for (const key of KW_FIELDS) {
    const told = point.fields[key];
    if (typeof told === 'number' && told > 0) return exact(told, 'kW', 1, 'page');
    if (told !== null && typeof told === 'object')
      return { lo: told.lo, hi: told.hi, value: null, unit: 'kW', digits: 1, sureness: 'practice' };
  }
  return null;
}

/** Ends a source feeds, by the sections that start at it. */
function endsBySource(trace: Trace | undefined): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>();
  for (const s of trace?.sections ?? []) {
    if (s.gathers || s.parent !== null) continue;
    const ends = found.get(s.from) ?? new Set<string>();
    for (const e of s.serves) ends.add(e);
    found.set(s.from, ends);
  }
  return new Map([...found].map(([k, v]) => [k, [...v].sort()]));
}

/** Branches the water goes on by from a flow end: zone valves, a header. */
function branchesOf(network: Network, end: TraceEnd): string[] {
  const point = network.plan.points[end.point];
  return (point?.connections ?? [])
    .filter((c) => c.id !== end.connection && network.kinds.circuit(c.service) === 'heatingFlow')
    .filter((c) => point !== undefined && network.kinds.part(point, c.id) === 'source')
    .map((c) => `${end.point}/${c.id}`);
}

const NO_LOAD = 'expansion-vessel';

function away(network: Network, one: string, other: string): number {
  const [a, b] = [network.vertices.get(one)?.place?.at, network.vertices.get(other)?.place?.at];
  return a && b ? Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) : Number.POSITIVE_INFINITY;
}

/** Returns of loads by themselves: of the same point, else the only one left, else each with its nearest. */
function pairReturns(network: Network, loads: readonly HeatLoad[], sources: readonly TraceEnd[]) {
  const real = sources.filter((s) => network.plan.points[s.point]?.kind !== NO_LOAD);
  const back = new Map<string, HeatLoad[]>();
  const ofPoint = new Map([...real].reverse().map((s) => [s.point, s]));
  const lone = loads.filter((l) => {
    const own = ofPoint.get(l.point);
    if (own) back.set(own.vertex, [...(back.get(own.vertex) ?? []), l]);
    return own === undefined;
  });
  const free = real.filter((s) => !back.has(s.vertex));
  if (free.length === 1 && lone.length > 0) back.set(free[0]?.vertex ?? '', lone);
  else if (free.length === lone.length) {
    const left = [...free];
    for (const load of lone) {
      left.sort((a, b) => away(network, load.id, a.vertex) - away(network, load.id, b.vertex));
      const nearest = left.shift();
      if (nearest) back.set(nearest.vertex, [load]);
    }
  }
  return back;
}

/** Everything that takes heat, with the way the flow goes to it and where its return starts. */
export function findLoads(network: Network, flow: Trace | undefined, back: Trace | undefined): Loads {
  const ends = endsBySource(flow);
  const endAt = new Map((flow?.ends ?? []).map((e) => [e.vertex, e]));
  const at = (vertex: string, zone: string | null, via: readonly string[]): readonly HeatLoad[] => {
    const end = endAt.get(vertex);
    const point = end && network.plan.points[end.point];
    if (!end || !point || via.includes(vertex) || point.kind === NO_LOAD) return [];
    const branches = branchesOf(network, end);
    if (branches.length > 0)
      return branches.flatMap((b) => (ends.get(b) ?? []).flatMap((e) => at(e, b, [...via, vertex])));
    const name = sayPoint(network.plan, end.point);
    const load = { id: vertex, point: end.point, name, kind: point.kind, kW: heatOf(point), zone };
    return [{ ...load, via: [...via, vertex], back: null }];
  };
  const roots = [...ends.keys()].filter((s) => !branchRoot(network, s));
  const all = roots.flatMap((r) => (ends.get(r) ?? []).flatMap((e) => at(e, null, [])));
  const paired = pairReturns(network, all, back?.sources ?? []);
  const backOf = new Map([...paired].flatMap(([v, ls]) => ls.map((l) => [l.id, v] as const)));
  const byId = new Map(all.map((l) => [l.id, { ...l, back: backOf.get(l.id) ?? null }]));
  const fetch = (ls: readonly HeatLoad[]): HeatLoad[] => ls.flatMap((l) => byId.get(l.id) ?? []);
  const once = (make: (key: string) => readonly HeatLoad[]) => {
    const known = new Map<string, readonly HeatLoad[]>();
    return (key: string): readonly HeatLoad[] => {
      const found = known.get(key) ?? fetch(make(key));
      known.set(key, found);
      return found;
    };
  };
  return {
    from: once((source) => (ends.get(source) ?? []).flatMap((e) => at(e, null, []))),
    at: once((end) => at(end, null, [])),
    backAt: (source) => {
      const point = network.vertices.get(source)?.point;
      if (point != null && network.plan.points[point]?.kind === NO_LOAD) return [];
      const ls = paired.get(source);
      return ls ? fetch(ls) : null;
    },
  };
}

/** A source that is fed by a flow of its own: a branch behind valves, and no boiler. */
function branchRoot(network: Network, source: string): boolean {
  const { point, connection } = network.vertices.get(source) ?? {};
  const record = point == null ? undefined : network.plan.points[point];
  return (record?.connections ?? []).some(
    (c) =>
      record !== undefined &&
      c.id !== connection &&
      network.kinds.circuit(c.service) === 'heatingFlow' &&
      network.kinds.part(record, c.id) === 'end',
  );
}

/** Loads a section carries; null where that cannot be told. */
export function loadsOf(loads: Loads, section: Section, root: (s: Section) => Section): readonly HeatLoad[] | null {
  const returns = section.service === 'heatingReturn';
  if (!section.sound) return null;
  if (!returns) return section.gathers ? null : section.serves.flatMap((v) => loads.at(v));
  if (!section.gathers) return loads.backAt(root(section).from);
  const parts = section.serves.map((v) => loads.backAt(v));
  return parts.some((p) => p === null) ? null : parts.flatMap((p) => p ?? []);
}
