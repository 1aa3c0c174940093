import type { Section, Trace, TraceEnd } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { addQuantities, exact, type Quantity } from '../../report/quantity.ts';
import type { Cite, Working } from '../../report/working.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { sayPoint, saySize } from '../say-names.ts';
import { contentOf } from '../water/content.ts';
import { drawOff, isTap, scaleOf } from '../water/draw-offs.ts';
import { plugTime, WAIT, waitFor } from '../water/wait.ts';
import { lengthOf, metresOf } from './lengths.ts';

/** The way of hot water from where it is made to one tap, or to old tails that nobody saw behind. */
export interface HotWay {
  readonly end: TraceEnd;
  readonly point: Point;
  readonly name: string;
  /** A tail: what is behind it is not known, so only what comes before it is told. */
  readonly isTail: boolean;
  /** Where the water is heated; null where the way begins at a joint to old pipe. */
  readonly heater: Point | null;
  readonly source: Point;
  readonly lights: boolean;
  /** From the heater on. */
  readonly sections: readonly Section[];
  readonly isNew: boolean;
  readonly lengthM: Quantity;
  /** Null where a size is not known. */
  readonly litres: Quantity | null;
  readonly missing: readonly string[];
  /** litres a minute; null for a kind no table has. */
  readonly flow: Quantity | null;
  readonly flowFrom: { readonly say: string; readonly cites: readonly Cite[] };
  readonly plug: Quantity | null;
  readonly wait: Working | null;
}

const HEATERS: ReadonlySet<string> = new Set(['boiler', 'cylinder']);
const MIXER = 'mixing-valve';
const TAILS: ReadonlySet<string> = new Set(['old-tails', 'join-point']);

export const hotTrace = (given: Given): Trace | undefined => given.traces.find((t) => t.circuit === 'hot');

interface Way {
  readonly heater: Point | null;
  readonly source: Point;
  readonly sections: readonly Section[];
}

/** Section by section back to the source, and on through a mixing valve to what heats the water. */
function wayTo(given: Given, trace: Trace, at: Ends, vertex: string, seen: ReadonlySet<string>): Way | null {
  const sections = trace.pathTo(vertex);
  const first = sections[0];
  const source = first && given.plan.points[at.sources.get(first.from)?.point ?? ''];
  if (!source || sections.some((s) => !s.sound)) return null;
  if (source.kind !== MIXER) return { heater: HEATERS.has(source.kind) ? source : null, source, sections };
  const hotIn = at.ends.get(`${source.id}/hotIn`);
  if (hotIn === undefined || seen.has(source.id)) return { heater: null, source, sections };
  const before = wayTo(given, trace, at, hotIn, new Set([...seen, source.id]));
  return before && { ...before, sections: [...before.sections, ...sections] };
}

interface Ends {
  readonly sources: ReadonlyMap<string, TraceEnd>;
  readonly ends: ReadonlyMap<string, string>;
}

function contents(sections: readonly Section[]): Pick<HotWay, 'litres' | 'missing'> {
  const parts = sections.map((s) => contentOf(metresOf(s.lengthMm), s.tube.kind, s.tube.size));
  const missing = sections.filter((_, i) => parts[i] === null).map((s) => `the bore of ${saySize(s.tube)}`);
  const known = parts.filter((p) => p !== null);
  if (missing.length > 0) return { litres: null, missing: [...new Set(missing)] };
  return { litres: known.length === 0 ? exact(0, 'litres', 2) : addQuantities(known), missing: [] };
}

type FlowOf = Pick<HotWay, 'flow' | 'flowFrom'>;

/** A combi makes no more hot water than its sheet says, however wide the tap. */
function cappedBy(heater: Point | null, of: FlowOf): FlowOf {
  const most = heater?.kind === 'boiler' ? heater.fields.hotLPerMin : null;
  if (typeof most !== 'number' || !(most > 0) || of.flow === null || of.flow.lo <= most) return of;
  return {
    flow: exact(most, 'litres/min', 1, 'page'),
    flowFrom: { say: 'all the boiler gives, by its sheet', cites: [] },
  };
}

function tapFlow(given: Given, point: Point, isTail: boolean): FlowOf {
  if (isTail) {
    return { flow: quantityOf(WAIT.tailFlow), flowFrom: { say: 'taken for a tail', cites: [WAIT.tailFlow.cite] } };
  }
  const told = point.fields.flowLPerMin;
  if (typeof told === 'number' && told > 0) {
    return { flow: exact(told, 'litres/min', 1, 'page'), flowFrom: { say: 'as told', cites: [] } };
  }
  const scale = scaleOf(given.plan.basis.editions);
  const draw = scale === undefined ? null : drawOff(point.kind, scale);
  if (draw === null) return { flow: null, flowFrom: { say: 'not known', cites: [] } };
  const { lo, value, sureness, cite } = draw.flow;
  const flow: Quantity = { ...exact(lo * 60, 'litres/min', 1, sureness), value: value === null ? null : value * 60 };
  return { flow, flowFrom: { say: `design flow, ${draw.scale}`, cites: [cite] } };
}

function wayOf(given: Given, end: TraceEnd, point: Point, way: Way): HotWay {
  const isTail = TAILS.has(point.kind);
  const { litres: found, missing } = contents(way.sections);
  // Behind a joint to old pipe lies more than is drawn.
  const litres = found && way.heater === null ? { ...found, hi: null, value: null } : found;
  const { flow, flowFrom } = cappedBy(way.heater, tapFlow(given, point, isTail));
  const lights = way.heater?.kind === 'boiler';
  return {
    end,
    point,
    name: sayPoint(given.plan, point.id),
    isTail,
    heater: way.heater,
    source: way.source,
    lights,
    sections: way.sections,
    isNew: way.sections.some((s) => s.legs.some((leg) => given.network.edges.get(leg)?.state === 'new')),
    lengthM: lengthOf(way.sections),
    litres,
    missing,
    flow,
    flowFrom,
    plug: litres && flow && plugTime(litres, flow),
    wait: isTail || litres === null || flow === null ? null : waitFor({ litres, flow, lights }),
  };
}

function work(given: Given): HotWay[] {
  const trace = hotTrace(given);
  if (!trace) return [];
  const at: Ends = {
    sources: new Map(trace.sources.map((s) => [s.vertex, s])),
    ends: new Map(trace.ends.map((e) => [`${e.point}/${e.connection}`, e.vertex])),
  };
  return trace.ends.flatMap((end): HotWay[] => {
    const point = given.plan.points[end.point];
    if (!point || !(isTap(point.kind) || TAILS.has(point.kind))) return [];
    const way = wayTo(given, trace, at, end.vertex, new Set());
    return way ? [wayOf(given, end, point, way)] : [];
  });
}

const known = new WeakMap<Given, readonly HotWay[]>();

/** Every hot tap and tail that something heats water for. Worked out once for each plan and case. */
export function hotWays(given: Given): readonly HotWay[] {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}

/** Longest wait first: what decides. Ways without a figure last. */
export const byWait = (a: HotWay, b: HotWay): number =>
  (b.wait?.result?.hi ?? b.wait?.result?.lo ?? -1) - (a.wait?.result?.hi ?? a.wait?.result?.lo ?? -1) ||
  (a.point.id < b.point.id ? -1 : 1);
