import type { Edge, Vertex } from '../../network/network.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';

/** Everything one heating water fills: pipes, and the points they are joined to, flow and return together. */
export interface WaterSystem {
  readonly edges: readonly Edge[];
  readonly vertices: ReadonlyMap<string, Vertex>;
  /** Sorted by id. */
  readonly points: readonly Point[];
  readonly boilers: readonly Point[];
  /** A boiler or a pipe of it is new. */
  readonly changed: boolean;
}

const CIRCUITS = new Set(['heatingFlow', 'heatingReturn']);
export const isHeating = (edge: Edge): boolean => CIRCUITS.has(edge.circuit);

/** Connections of a point that heating water goes through, as vertices. */
export const heatingTails = (given: Given, point: Point): string[] =>
  point.connections
    .filter((c) => CIRCUITS.has(given.network.kinds.circuit(c.service)))
    .map((c) => `${point.id}/${c.id}`);

function gather(given: Given, edges: readonly Edge[]): WaterSystem {
  const vertices = new Map<string, Vertex>();
  for (const e of edges) {
    for (const id of [e.a, e.b]) {
      const v = given.network.vertices.get(id);
      if (v) vertices.set(id, v);
    }
  }
  const ids = new Set([...vertices.values()].flatMap((v) => v.point ?? []));
  const points = [...ids].sort().flatMap((id) => given.plan.points[id] ?? []);
  const boilers = points.filter((p) => p.kind === 'boiler');
  const changed = edges.some((e) => e.state === 'new') || boilers.some((b) => b.option !== null);
  return { edges, vertices, points, boilers, changed };
}

const systems = new WeakMap<Given, readonly WaterSystem[]>();

/** Systems that hang together, those with a boiler first. Walks every heating pipe once. */
export function waterSystems(given: Given): readonly WaterSystem[] {
  const found = systems.get(given);
  if (found) return found;
  const { network, plan } = given;
  const left = new Set([...network.edges.values()].filter(isHeating).map((e) => e.id));
  const made: WaterSystem[] = [];
  for (const first of [...left]) {
    if (!left.has(first)) continue;
    const edges: Edge[] = [];
    const open: string[] = [network.edges.get(first)?.a ?? ''];
    const seen = new Set(open);
    const go = (id: string): void => {
      if (!seen.has(id)) {
        seen.add(id);
        open.push(id);
      }
    };
    for (const id of open) {
      const v = network.vertices.get(id);
      for (const e of v?.edges ?? []) {
        const edge = network.edges.get(e);
        if (!edge || !left.delete(e)) continue;
        edges.push(edge);
        go(edge.a);
        go(edge.b);
      }
      const point = v?.point == null ? undefined : plan.points[v.point];
      if (point && v?.service != null && CIRCUITS.has(network.kinds.circuit(v.service)))
        for (const tail of heatingTails(given, point)) go(tail);
    }
    made.push(gather(given, edges));
  }
  const sorted = made.sort((a, b) => b.boilers.length - a.boilers.length || b.edges.length - a.edges.length);
  systems.set(given, sorted);
  return sorted;
}
