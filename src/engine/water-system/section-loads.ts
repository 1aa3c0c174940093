import type { Section, Trace } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { type Figure, figure, type Known } from '../../reference/figure.ts';
import { tube } from '../../reference/tubes.ts';
import { addQuantities, exact, leastSure, type Quantity } from '../../report/quantity.ts';
import { anything } from '../gas/interval.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { drawOff, isTap, scaleOf } from '../water/draw-offs.ts';
import { designFlow } from '../water/loading-units.ts';
import { lesser } from '../water/mains-curve.ts';
import { velocity } from '../water/pipe-friction.ts';

/** One thing that draws water: its flow, and its units on the scale of the plan where it has any. */
interface Draw {
  readonly flow: Quantity;
  readonly units: Quantity | null;
}

/** A piece of cold or hot pipe with what it has to carry. */
export interface SectionLoad {
  readonly section: Section;
  readonly outlets: number;
  /** All outlets beyond, on the scale of the plan; null where one has none there. */
  readonly units: Quantity | null;
  /** l/s: of one outlet its own; of several by the graph where it was read, else between the greatest and all at once. */
  readonly flow: Quantity;
  /** m/s; null where the bore is not known. */
  readonly velocity: Quantity | null;
  readonly limit: Known;
  readonly isNew: boolean;
}

const NONE: Quantity = exact(0, 'l/s', 2);
const lps = (q: Quantity): Quantity => ({
  ...q,
  lo: q.lo / 60,
  hi: q.hi === null ? null : q.hi / 60,
  value: q.value === null ? null : q.value / 60,
  unit: 'l/s',
  digits: 2,
});

/** What several draws come to. Between the greatest and all of them lies every judgement of how many run at once. */
export function together(draws: readonly Draw[], scale: string): Draw {
  const [first] = draws;
  if (!first) return { flow: NONE, units: null };
  if (draws.length === 1) return first;
  const known = draws.flatMap((d) => d.units ?? []);
  const units = known.length === draws.length ? addQuantities(known) : null;
  const read = units && designFlow(scale, units).result;
  if (read) return { flow: read, units };
  const all = addQuantities(draws.map((d) => d.flow));
  return { flow: { ...all, lo: Math.max(...draws.map((d) => d.flow.lo)), value: null }, units };
}

interface Supply {
  readonly traces: readonly Trace[];
  readonly pointOf: (vertex: string) => Point | undefined;
  /** Ends that a point feeds on its far side. */
  readonly beyond: ReadonlyMap<string, readonly string[]>;
}

function supplyOf(given: Given): Supply {
  const traces = given.traces.filter((t) => t.circuit === 'cold' || t.circuit === 'hot');
  const points = new Map(traces.flatMap((t) => [...t.ends, ...t.sources].map((e) => [e.vertex, e.point] as const)));
  const beyond = new Map<string, string[]>();
  for (const section of traces.flatMap((t) => t.sections)) {
    const from = section.parent === null ? points.get(section.from) : undefined;
    if (from !== undefined) beyond.set(from, [...(beyond.get(from) ?? []), ...section.serves]);
  }
  return { traces, pointOf: (vertex) => given.plan.points[points.get(vertex) ?? ''], beyond };
}

function loadOf(supply: Supply, scale: string): (vertex: string) => readonly Draw[] {
  const known = new Map<string, readonly Draw[]>();
  const drawsOf = (vertex: string): readonly Draw[] => {
    const found = known.get(vertex);
    if (found) return found;
    // A loop of appliances feeds itself: nothing more is added the second time round.
    known.set(vertex, []);
    const point = supply.pointOf(vertex);
    const made = point ? ofPoint(point) : [{ flow: anything('l/s', 2), units: null }];
    known.set(vertex, made);
    return made;
  };
  const ofPoint = (point: Point): readonly Draw[] => {
    if (isTap(point.kind)) {
      const draw = drawOff(point.kind, scale);
      const told = point.fields.flowLPerMin;
      if (typeof told === 'number' && told > 0)
        return [{ flow: lps(exact(told, 'litres/min', 1, 'page')), units: draw?.units ?? null }];
      return [{ flow: draw ? quantityOf(draw.flow) : anything('l/s', 2), units: draw?.units ?? null }];
    }
    const behind = supply.beyond.get(point.id);
    if (behind === undefined) return [{ flow: anything('l/s', 2), units: null }];
    const draws = behind.flatMap(drawsOf);
    const most = point.kind === 'boiler' ? point.fields.hotLPerMin : null;
    if (typeof most !== 'number' || !(most > 0)) return draws;
    return [{ flow: lesser(together(draws, scale).flow, lps(exact(most, 'litres/min', 1, 'page'))), units: null }];
  };
  return drawsOf;
}

function speedOf(section: Section, flow: Quantity): Quantity | null {
  const size = tube(section.tube.kind, section.tube.size);
  if (!size || size.boreMm === null) return null;
  const bore = size.boreMm;
  const of = (q: number | null): number | null => (q === null ? null : velocity(q, bore));
  return {
    lo: velocity(flow.lo, bore),
    hi: of(flow.hi),
    value: of(flow.value),
    unit: 'm/s',
    digits: 1,
    sureness: leastSure(flow.sureness, size.sureness, 'derived'),
  };
}

function work(given: Given): SectionLoad[] {
  const scale = scaleOf(given.plan.basis.editions);
  if (scale === undefined) return [];
  const limits = new Map<string, Figure>(
    ['pipe', 'branch'].map((column) => [column, figure('water-velocity', scale, column)]),
  );
  const supply = supplyOf(given);
  const drawsOf = loadOf(supply, scale);
  return supply.traces.flatMap((t) =>
    t.sections.flatMap((section): SectionLoad[] => {
      const draws = section.serves.flatMap(drawsOf);
      const limit = limits.get(draws.length === 1 ? 'branch' : 'pipe');
      if (!section.sound || section.onRing || draws.length === 0 || limit?.is !== 'known') return [];
      const { flow, units } = together(draws, scale);
      return [
        {
          section,
          outlets: draws.length,
          units,
          flow,
          velocity: speedOf(section, flow),
          limit,
          isNew: section.legs.some((leg) => given.network.edges.get(leg)?.state === 'new'),
        },
      ];
    }),
  );
}

const known = new WeakMap<Given, readonly SectionLoad[]>();

/** Every piece of cold and hot pipe that feeds something. Worked out once for each plan and case. */
export function sectionLoads(given: Given): readonly SectionLoad[] {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}
