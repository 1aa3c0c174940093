import { edgesByVertex } from './chains.ts';
import type { Edge, Network, Vertex } from './network.ts';
import { saidPoint, saidService } from './said.ts';
import type { DeadEnd, Illegal, TraceEnd } from './trace.ts';

/** One connected part of a circuit, with what it meets. */
export interface CircuitPart {
  readonly edges: readonly Edge[];
  readonly sources: readonly TraceEnd[];
  readonly ends: readonly TraceEnd[];
  readonly deadEnds: readonly DeadEnd[];
  readonly illegal: readonly Illegal[];
  /** Where flow starts, or where a gathering part ends; null where there is neither. */
  readonly root: string | null;
  readonly gathers: boolean;
  readonly sound: boolean;
}

function connected(edges: readonly Edge[]): Edge[][] {
  const at = edgesByVertex(edges);
  const seen = new Set<string>();
  const parts: Edge[][] = [];
  for (const first of edges) {
    if (seen.has(first.id)) continue;
    seen.add(first.id);
    const part = [first];
    for (const edge of part) {
      for (const next of [...(at.get(edge.a) ?? []), ...(at.get(edge.b) ?? [])]) {
        if (seen.has(next.id)) continue;
        seen.add(next.id);
        part.push(next);
      }
    }
    parts.push(part.sort((a, b) => (a.id < b.id ? -1 : 1)));
  }
  return parts;
}

const unique = (of: readonly string[]): string[] => [...new Set(of)].sort();
export const runsOf = (edges: readonly Edge[]): string[] => unique(edges.map((e) => e.run));

function mixedAt(network: Network, circuit: string, vertex: Vertex, edges: readonly Edge[]): Illegal[] {
  const all = vertex.edges.flatMap((id) => network.edges.get(id) ?? []);
  const found: Illegal[] = [];
  const points = vertex.point === null ? [] : [vertex.point];
  if (all.some((e) => e.circuit !== circuit)) {
    const met = unique(all.map((e) => saidService(e.service))).join(' and ');
    const say = `Pipes of different services meet here: ${met}. They cannot share a joint.`;
    found.push({
      kind: 'twoServices',
      runs: runsOf(all),
      points,
      edges: all.map((e) => e.id),
      vertices: [vertex.id],
      say,
    });
  }
  const point = vertex.point === null ? undefined : network.plan.points[vertex.point];
  const first = edges[0];
  if (point && first && vertex.connection !== null && !network.kinds.takes(point, vertex.connection, first.service)) {
    const label = point.connections.find((c) => c.id === vertex.connection)?.label ?? vertex.connection;
    const say = `The pipe is on the wrong connection of ${saidPoint(point)}: ${label}.`;
    found.push({
      kind: 'wrongConnection',
      runs: runsOf(edges),
      points,
      edges: edges.map((e) => e.id),
      vertices: [vertex.id],
      say,
    });
  }
  return found;
}

function deadWhy(vertex: Vertex, degree: number): DeadEnd['why'] | undefined {
  if (vertex.gone !== null) return vertex.capped ? 'capped' : 'gone';
  if (vertex.point !== null) return 'noPart';
  if (degree !== 1 || vertex.edges.length !== 1) return undefined;
  return vertex.capped ? 'capped' : 'open';
}

const DEAD_WORDS: Readonly<Record<Exclude<DeadEnd['why'], 'capped'>, string>> = {
  open: 'The pipe ends in the air here: carry it on, or cap it.',
  gone: 'What this pipe was connected to is taken out, and the pipe stays: strip it, cap it, or connect it anew.',
  noPart: 'It is not told whether this is where it starts or where it is used.',
};

function rootOf(sources: readonly TraceEnd[], ends: readonly TraceEnd[], mayGather: boolean) {
  const [source, ...moreSources] = sources;
  const [end, ...moreEnds] = ends;
  if (mayGather && end && moreEnds.length === 0 && sources.length !== 1) return { root: end.vertex, gathers: true };
  return { root: source?.vertex ?? null, gathers: false, twoSources: moreSources.length > 0 };
}

/** The connected parts of one circuit, in the order of their first edge, with what cannot stay as drawn. */
export function circuitParts(network: Network, circuit: string): CircuitPart[] {
  const all = [...network.edges.values()].filter((e) => e.circuit === circuit);
  return connected(all).map((edges) => {
    const sources: TraceEnd[] = [];
    const ends: TraceEnd[] = [];
    const deadEnds: DeadEnd[] = [];
    const illegal: Illegal[] = [];
    for (const [id, here] of [...edgesByVertex(edges)].sort(([a], [b]) => (a < b ? -1 : 1))) {
      const vertex = network.vertices.get(id);
      if (!vertex) continue;
      illegal.push(...mixedAt(network, circuit, vertex, here));
      const { point, connection } = vertex;
      const record = point === null ? undefined : network.plan.points[point];
      const part = record && connection !== null ? network.kinds.part(record, connection) : undefined;
      if (part !== undefined && point !== null && connection !== null) {
        (part === 'source' ? sources : ends).push({ vertex: id, point, connection });
        continue;
      }
      const why = deadWhy(vertex, here.length);
      if (why === undefined) continue;
      deadEnds.push({ vertex: id, why });
      if (why === 'capped') continue;
      const points = vertex.gone !== null ? [vertex.gone.point] : point === null ? [] : [point];
      illegal.push({
        kind: 'deadEnd',
        runs: runsOf(here),
        points,
        edges: here.map((e) => e.id),
        vertices: [id],
        say: DEAD_WORDS[why],
      });
    }
    const service = edges[0]?.service ?? '';
    const turns = (source: TraceEnd): boolean => {
      const point = network.plan.points[source.point];
      return point !== undefined && (network.kinds.turns?.(point) ?? false);
    };
    const steady = sources.filter((s) => !turns(s));
    const fed = steady.length > 0 ? steady : sources;
    const { root, gathers, twoSources } = rootOf(fed, ends, network.kinds.gathers(service));
    const whole = { runs: runsOf(edges), edges: edges.map((e) => e.id) };
    if (twoSources) {
      const say = `${sources.length} sources feed the same pipes, so what flows where cannot be told.`;
      illegal.push({
        kind: 'twoSources',
        ...whole,
        points: unique(sources.map((s) => s.point)),
        vertices: sources.map((s) => s.vertex),
        say,
      });
    }
    if (root === null) {
      const say = 'No source feeds these pipes yet.';
      illegal.push({
        kind: 'noSource',
        ...whole,
        points: unique(ends.map((e) => e.point)),
        vertices: [edges[0]?.a ?? ''],
        say,
      });
    }
    const sound = !illegal.some(
      (i) => i.kind === 'twoSources' || i.kind === 'twoServices' || i.kind === 'wrongConnection',
    );
    return { edges, sources, ends, deadEnds, illegal, root, gathers, sound };
  });
}

/** Circuits with live pipe, sorted. */
export const circuitsOf = (network: Network): string[] => unique([...network.edges.values()].map((e) => e.circuit));
