import type { Network } from '../../network/network.ts';
import type { Section, Trace } from '../../network/trace.ts';
import { tube } from '../../reference/tubes.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { designFlow } from '../heating/design-flow.ts';
import { type PipeAsk, type PipeLoss, pipeLoss } from '../heating/section-loss.ts';
import { rising } from '../heating/spread.ts';
import { sayPoint, saySize, sentence } from '../say-names.ts';
import { boilerBound } from './boiler-bound.ts';
import { carried } from './carried.ts';
import { designTemps, type Temps } from './design-temps.ts';
import { findLoads, type HeatLoad, type Loads, loadsOf } from './loads.ts';
import { heatingFittings, type InLine } from './section-fittings.ts';
import { ringFlows, spreadOf } from './section-flows.ts';

export interface HeatSection {
  readonly section: Section;
  readonly label: string;
  /** Nothing of it is new: its size is not up for choice. */
  readonly kept: boolean;
  readonly loads: readonly HeatLoad[] | null;
  readonly kW: Quantity;
  readonly flow: Quantity;
  readonly ask: PipeAsk | null;
  readonly result: PipeLoss | null;
  readonly inLine: InLine;
  /** The same section in another bore, or with another flow; null where there is no answer. */
  readonly tried: (
    change: { readonly kind: string; readonly boreMm: number } | null,
    flowTimes: number,
  ) => PipeLoss | null;
}

/** Flow and return of a plan in one case, worked out once and read by every rule and section. */
export interface HeatingSystem {
  readonly temps: Temps;
  readonly flow: Trace | undefined;
  readonly back: Trace | undefined;
  readonly loads: Loads;
  readonly sections: ReadonlyMap<string, HeatSection>;
  /** Most that any boiler of the plan gives to its heating, kW; null where none tells. */
  readonly bound: Quantity | null;
}

function metresOf(section: Section): Quantity {
  const { lo, hi, value } = section.lengthMm;
  const m = (n: number | null): number | null => (n === null ? null : n / 1000);
  return { lo: lo / 1000, hi: m(hi), value: m(value), unit: 'm', digits: 1, sureness: 'derived' };
}

function labelOf(network: Network, section: Section): string {
  const place = (vertex: string): string => {
    const v = network.vertices.get(vertex);
    if (v?.point) return sayPoint(network.plan, v.point);
    return (v?.edges.length ?? 0) > 2 ? 'tee' : 'change';
  };
  return sentence(`${place(section.from)} to ${place(section.to)}, ${saySize(section.tube)}`);
}

/** Up the tree to the section at the root; each is looked up once. */
function rootFinder(trace: Trace): (s: Section) => Section {
  const byId = new Map(trace.sections.map((s) => [s.id, s]));
  const known = new Map<string, Section>();
  const find = (s: Section): Section => {
    const found = known.get(s.id);
    if (found) return found;
    const up = s.parent === null ? undefined : byId.get(s.parent);
    const root = up ? find(up) : s;
    known.set(s.id, root);
    return root;
  };
  return find;
}

type FlowsOf = (section: Section) => {
  readonly loads: readonly HeatLoad[] | null;
  readonly kW: Quantity;
  readonly flow: Quantity;
};

const none = (unit: string, digits: number): Quantity => ({
  lo: 0,
  hi: null,
  value: null,
  unit,
  digits,
  sureness: 'derived',
});

/** Loads of each boiler that has one flow and one return: what goes out by the one comes back by the other. */
function leavingOf(given: Given, flow: Trace | undefined, back: Trace | undefined, loads: Loads) {
  const once = (ends: readonly { readonly point: string }[], point: string): boolean =>
    ends.filter((e) => e.point === point).length === 1;
  const { sources, sections } = flow ?? { sources: [], sections: [] };
  const found = new Map<string, readonly HeatLoad[]>();
  for (const s of sources) {
    if (given.plan.points[s.point]?.kind !== 'boiler' || !once(sources, s.point) || !once(back?.ends ?? [], s.point))
      continue;
    const own = loads.from(s.vertex);
    if (own.length > 0 && sections.some((x) => x.from === s.vertex && x.sound)) found.set(s.point, own);
  }
  return found;
}

/** Heat and flow of the sections of one trace; rings are shared out by the net. */
function flowsIn(
  trace: Trace,
  loads: Loads,
  leaving: ReadonlyMap<string, readonly HeatLoad[]>,
  temps: Temps,
  bound: Quantity | null,
): FlowsOf {
  const root = rootFinder(trace);
  const returns = trace.circuit === 'heatingReturn';
  const pointAt = new Map(trace.ends.map((e) => [e.vertex, e.point]));
  const tree: FlowsOf = (section) => {
    // What leaves a boiler comes back to it, whether or not the way between is drawn.
    const boiler = returns && section.gathers && section.parent === null ? pointAt.get(section.to) : undefined;
    const beyond = (boiler === undefined ? null : leaving.get(boiler)) ?? loadsOf(loads, section, root);
    const kW = carried(beyond, bound);
    return { loads: beyond, kW, flow: designFlow(kW, temps) ?? none('kg/s', 3) };
  };
  if (trace.rings.length === 0) return tree;
  const at = (pick: (q: Quantity) => number | null) =>
    ringFlows(
      trace,
      (vertex) => {
        const here = returns ? loads.backAt(vertex) : loads.at(vertex);
        if (here === null) return trace.sources.some((s) => s.vertex === vertex) ? null : 0;
        const flow = designFlow(carried(here, bound), temps);
        const n = flow && pick(flow);
        return n === null ? null : returns ? 0 - n : n;
      },
      returns ? temps.returnC : temps.flowC,
    );
  const solved = [at((q) => q.lo), at((q) => q.value ?? (q.hi === null ? null : (q.lo + q.hi) / 2)), at((q) => q.hi)];
  return (section) => {
    const own = tree(section);
    if (!section.onRing) return own;
    return { ...own, flow: spreadOf(solved.map((m) => m?.get(section.id))) ?? none('kg/s', 3) };
  };
}

function solveTrace(
  given: Given,
  trace: Trace,
  loads: Loads,
  leaving: ReadonlyMap<string, readonly HeatLoad[]>,
  temps: Temps,
  bound: Quantity | null,
): HeatSection[] {
  const fittings = heatingFittings(given.network, trace);
  const flowsOf = flowsIn(trace, loads, leaving, temps, bound);
  const tC = trace.circuit === 'heatingReturn' ? temps.returnC : temps.flowC;
  return trace.sections.map((section) => {
    const size = tube(section.tube.kind, section.tube.size);
    const { loads: beyond, kW, flow } = flowsOf(section);
    const inLine = fittings(section, size?.boreMm ?? 0);
    const askOf = (kind: string, boreMm: number, q: Quantity, parts: InLine): PipeAsk => ({
      flow: q,
      tubeKind: kind,
      boreMm,
      tC,
      lengthM: metresOf(section),
      fittingsM: parts.metres,
      kvs: parts.kvs,
    });
    const ask = size?.boreMm == null ? null : askOf(section.tube.kind, size.boreMm, flow, inLine);
    return {
      section,
      label: labelOf(given.network, section),
      kept: section.legs.every((leg) => given.network.edges.get(leg)?.state === 'there'),
      loads: beyond,
      kW,
      flow,
      ask,
      result: ask && pipeLoss(ask),
      inLine,
      tried(change, flowTimes) {
        const [kind, bore] = change ? [change.kind, change.boreMm] : [section.tube.kind, size?.boreMm ?? null];
        if (bore === null) return null;
        const q = rising([flow], 'kg/s', 3, (n) => n * flowTimes);
        return pipeLoss(askOf(kind, bore, q, change ? fittings(section, bore) : inLine));
      },
    };
  });
}

const solved = new WeakMap<Given, HeatingSystem>();

export function heatingOf(given: Given): HeatingSystem {
  const known = solved.get(given);
  if (known) return known;
  const flow = given.traces.find((t) => t.circuit === 'heatingFlow');
  const back = given.traces.find((t) => t.circuit === 'heatingReturn');
  const loads = findLoads(given.network, flow, back);
  const temps = designTemps(given.plan);
  const bound = boilerBound(given, flow);
  const leaving = leavingOf(given, flow, back, loads);
  const sections = [flow, back].flatMap((t) => (t ? solveTrace(given, t, loads, leaving, temps, bound) : []));
  const made = { temps, flow, back, loads, bound, sections: new Map(sections.map((s) => [s.section.id, s])) };
  solved.set(given, made);
  return made;
}
