import { legFall } from '../../geometry/falls.ts';
import type { Measured, Place } from '../../geometry/places.ts';
import { type Edge, type Network, otherEnd, type Vertex } from '../../network/network.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Trace, TraceEnd } from '../../network/trace.ts';
import type { Given } from '../given.ts';

/** What runs away by itself: the services of the two circuits that are judged by their fall. */
export type DrainService = 'condensate' | 'boilerRelief' | 'discharge';

/** One piece of a drain in the way the water goes. Null where a height or a place is missing, or nobody can see it. */
export interface DrainStep {
  readonly edge: Edge;
  readonly from: string;
  readonly to: string;
  readonly a: Place | null;
  readonly b: Place | null;
  /** From `a` down to `b`, mm; below zero where it climbs. */
  readonly drop: Measured | null;
  /** As seen from above, mm. */
  readonly flatMm: number | null;
}

/** From where water leaves a thing to where it ends: all the pieces, in the way it goes. */
export interface Drain {
  /** Runs it is made of and the vertex it starts at: the same plan gives the same key. */
  readonly key: string;
  readonly service: string;
  /** Null where it starts in the air. */
  readonly source: TraceEnd | null;
  /** Null where it ends in the air. */
  readonly end: TraceEnd | null;
  readonly steps: readonly DrainStep[];
  readonly runs: readonly string[];
}

const placeOf = (network: Network, vertex: string): Place | null => network.vertices.get(vertex)?.place ?? null;

function stepOf(network: Network, edge: Edge, from: string): DrainStep {
  const to = otherEnd(edge, from);
  const [a, b] = [placeOf(network, from), placeOf(network, to)];
  const leg = network.plan.legs[edge.id];
  const fall = leg && edge.kind === 'leg' ? legFall(network.plan, leg, edge.a === from ? 'a' : 'b') : undefined;
  return { edge, from, to, a, b, drop: fall?.drop ?? null, flatMm: fall?.flatMm ?? null };
}

/** Legs one after the other from a vertex; stops where two do not meet. */
function walk(network: Network, legs: readonly string[], start: string): DrainStep[] {
  const steps: DrainStep[] = [];
  let here = start;
  for (const id of legs) {
    const edge = network.edges.get(id);
    if (!edge || (edge.a !== here && edge.b !== here)) break;
    const step = stepOf(network, edge, here);
    steps.push(step);
    here = step.to;
  }
  return steps;
}

function drainOf(steps: readonly DrainStep[], source: TraceEnd | null, end: TraceEnd | null): Drain[] {
  const first = steps[0];
  if (!first) return [];
  const runs = [...new Set(steps.map((s) => s.edge.run))].sort();
  const last = steps[steps.length - 1] ?? first;
  return [{ key: `${first.from}>${last.to}`, service: first.edge.service, source, end, steps, runs }];
}

/** Everything a source sends water to, and everything that has an end but starts in the air. */
function ofTrace(network: Network, trace: Trace): Drain[] {
  const sourceAt = new Map(trace.sources.map((s) => [s.vertex, s] as const));
  const endAt = new Map(trace.ends.map((e) => [e.vertex, e] as const));
  const open = trace.deadEnds.filter((d) => d.why !== 'capped').map((d) => d.vertex);
  const found = new Map<string, Drain>();
  for (const vertex of [...sourceAt.keys(), ...endAt.keys(), ...open]) {
    const way = trace.pathTo(vertex);
    const [first] = way;
    if (!first) continue;
    const steps = walk(
      network,
      way.flatMap((s) => s.legs),
      first.from,
    );
    const to = steps[steps.length - 1]?.to ?? '';
    // A way that merely passes from one open end to another tells nothing of its direction.
    if (!sourceAt.has(first.from) && !endAt.has(to)) continue;
    for (const drain of drainOf(steps, sourceAt.get(first.from) ?? null, endAt.get(to) ?? null))
      found.set(drain.key, drain);
  }
  return [...found.values()];
}

/** Runs nothing reaches: told from the end they were drawn from. */
function loose(network: Network, told: ReadonlySet<string>, services: ReadonlySet<string>): Drain[] {
  return [...network.edgesOfRun.keys()].flatMap((run) => {
    if (!services.has(network.plan.runs[run]?.service ?? '') || told.has(run)) return [];
    const { steps, start } = orderedLegs(network, run);
    if (start === null) return [];
    return drainOf(
      walk(
        network,
        steps.map((s) => s.edge),
        start,
      ),
      null,
      null,
    );
  });
}

const CIRCUITS: Readonly<Record<string, ReadonlySet<string>>> = {
  condensate: new Set(['condensate']),
  discharge: new Set(['discharge', 'boilerRelief']),
  flue: new Set(['flue']),
};

/**
 * Condensate, or reliefs and discharges together: every way water takes, from its source to its end. A flue is told the
 * same way, from its appliance to its terminal, though what falls in it goes back.
 */
export function drainsOf(given: Given, circuit: 'condensate' | 'discharge' | 'flue'): Drain[] {
  const { network } = given;
  const trace = given.traces.find((t) => t.circuit === circuit);
  const traced = trace ? ofTrace(network, trace) : [];
  const told = new Set(traced.flatMap((d) => d.runs));
  return [...traced, ...loose(network, told, CIRCUITS[circuit] ?? new Set())].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** The kind of point a drain starts at or ends in; null in the air. */
export const kindOf = (given: Given, end: TraceEnd | null): string | null =>
  end === null ? null : (given.plan.points[end.point]?.kind ?? null);

/** Something of it is new: only then is it this job's business. */
export const isNew = (drain: Drain): boolean => drain.steps.some((s) => s.edge.state === 'new');

export const vertexAt = (given: Given, id: string): Vertex | undefined => given.network.vertices.get(id);
