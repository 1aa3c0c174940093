import type { Network } from '../../network/network.ts';
import type { Section, Trace } from '../../network/trace.ts';
import { addQuantities, againstMost, exact, type Quantity, type Verdict } from '../../report/quantity.ts';
import type { Cite, Working } from '../../report/working.ts';
import { gasFlow } from '../gas/flow.ts';
import { anything } from '../gas/interval.ts';
import { type PathDrop, pathDrop } from '../gas/path-drop.ts';
import { pressureLimit } from '../gas/pressure-limit.ts';
import { type SectionDrop, sectionDrop } from '../gas/section-drop.ts';
import type { PathSection } from '../gas/size-answers.ts';
import { limitFor } from '../limits.ts';
import { midSentence, sayPoint, saySize, sentence } from '../say-names.ts';
import { applianceLoad } from './appliance-load.ts';
import type { FittingCounts } from './section-fittings.ts';
import { sectionFlows } from './section-flows.ts';

export interface GasAppliance {
  readonly vertex: string;
  readonly point: string;
  readonly name: string;
  readonly load: Working;
  /** m3/h at full input; null where the input is not known. */
  readonly flow: Quantity | null;
  readonly assumedClass: boolean;
  /** Sections from the meter on. Empty where no meter reaches it. */
  readonly path: readonly string[];
  readonly drop: PathDrop;
  readonly limit: Quantity | null;
  readonly limitNote: string | null;
  readonly verdict: Verdict | 'cantTell';
}

export interface GasSection {
  readonly section: Section;
  readonly ask: PathSection;
  readonly result: SectionDrop;
}

export interface GasMeter {
  readonly point: string;
  readonly name: string;
  readonly kind: string | null;
  readonly ratedM3PerH: number | null;
  readonly flow: Quantity;
}

/** The gas side of a plan in one case, worked out once and read by every rule and section. */
export interface GasSystem {
  readonly trace: Trace;
  readonly sections: ReadonlyMap<string, GasSection>;
  readonly appliances: readonly GasAppliance[];
  readonly meter: GasMeter | null;
  readonly cites: readonly Cite[];
}

const nothing: Quantity = exact(0, 'm3/h', 2);

function lengthOf(section: Section): Quantity {
  const { lo, hi, value } = section.lengthMm;
  return {
    lo: lo / 1000,
    hi: hi === null ? null : hi / 1000,
    value: value === null ? null : value / 1000,
    unit: 'm',
    digits: 1,
    sureness: 'derived',
  };
}

function labelOf(network: Network, section: Section): string {
  const place = (vertex: string): string => {
    const v = network.vertices.get(vertex);
    if (v?.point) return sayPoint(network.plan, v.point);
    return (v?.edges.length ?? 0) > 2 ? 'tee' : 'change of size';
  };
  const [from, to] = [place(section.from), place(section.to)];
  // A size nobody read is asked for in a sentence, where the two places are enough to find the pipe.
  if (section.tube.size === null) return sentence(`${from} to ${midSentence(to)}`);
  return sentence(`${from} to ${to}, ${saySize(section.tube)}`);
}

function appliancesOf(
  network: Network,
  trace: Trace,
): Omit<GasAppliance, 'drop' | 'verdict' | 'path' | 'limit' | 'limitNote'>[] {
  const gas = network.plan.basis.gas;
  return trace.ends.flatMap((end) => {
    const point = network.plan.points[end.point];
    if (!point) return [];
    const name = sayPoint(network.plan, end.point);
    const { working, assumedClass } = applianceLoad(point, name, gas);
    const flow = working.result && gasFlow(working.result, gas, network.plan.basis.calorificValueMJPerM3).result;
    return [{ vertex: end.vertex, point: end.point, name, load: working, flow, assumedClass }];
  });
}

/** A section the gas goes through against the way its path is walked gains what it would lose. */
function backwards(result: SectionDrop): SectionDrop {
  const { lo, hi, value } = result.drop;
  return hi === null
    ? result
    : { ...result, drop: { ...result.drop, lo: -hi, hi: -lo, value: value === null ? null : -value } };
}

function meterOf(network: Network, trace: Trace, flows: ReadonlyMap<string, Quantity | null>): GasMeter | null {
  const source = trace.sources.length === 1 ? trace.sources[0] : undefined;
  const point = source && network.plan.points[source.point];
  if (!source || !point) return null;
  const { meter, ratedM3PerH } = point.fields;
  const all = trace.ends.map((e) => flows.get(e.vertex) ?? anything('m3/h', 2));
  return {
    point: source.point,
    name: sayPoint(network.plan, source.point),
    kind: typeof meter === 'string' ? meter : null,
    ratedM3PerH: typeof ratedM3PerH === 'number' ? ratedM3PerH : null,
    flow: all.length === 0 ? nothing : addQuantities(all),
  };
}

export function solveGas(network: Network, trace: Trace, fittings: FittingCounts): GasSystem {
  const { plan } = network;
  const found = appliancesOf(network, trace);
  const flows = new Map(found.map((a) => [a.vertex, a.flow]));
  const askOf = (section: Section, flow: Quantity): PathSection => ({
    label: labelOf(network, section),
    tubeKind: section.tube.kind,
    size: section.tube.size,
    lengthM: lengthOf(section),
    fittings: fittings(section),
    flow,
    gas: plan.basis.gas,
    editions: plan.basis.editions,
    kept: section.legs.every((leg) => network.edges.get(leg)?.state === 'there'),
  });
  const shared = sectionFlows(trace, flows, askOf);
  const sections = new Map<string, GasSection>();
  for (const section of trace.sections) {
    const { flow, against } = shared.get(section.id) ?? { flow: nothing, against: false };
    const ask = askOf(section, flow);
    const result = sectionDrop(ask);
    sections.set(section.id, { section, ask, result: against ? backwards(result) : result });
  }
  const general = pressureLimit(plan.basis.gas, plan.basis.editions);
  const appliances = found.map((a): GasAppliance => {
    const path = trace.pathTo(a.vertex);
    const parts = path.flatMap((s) => sections.get(s.id)?.result ?? []);
    const drop = pathDrop(`${a.name}: gas drop`, parts);
    const held =
      general &&
      limitFor(plan, general.id, a.point, {
        is: 'known',
        ...general.limit,
        cite: { table: '', ...general.cite },
        note: null,
      });
    const limit = held?.figure ?? null;
    const sound = parts.length > 0 && path.every((s) => s.sound);
    const verdict = !sound || !limit ? 'cantTell' : againstMost(drop.drop, limit.lo);
    return {
      ...a,
      path: path.map((s) => s.id),
      drop,
      limit,
      limitNote: held?.overridden ? `${held.overridden.note}, page ${held.overridden.page}` : null,
      verdict,
    };
  });
  return { trace, sections, appliances, meter: meterOf(network, trace, flows), cites: general ? [general.cite] : [] };
}
