import { connectionPlace } from '../geometry/hosting.ts';
import { lengthBetween, nodePlace } from '../geometry/places.ts';
import { distance3, sub3, unit3 } from '../geometry/vec.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import type { Leg, PlanNode, Stretch, Tube } from '../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../plan/units.ts';
import { type Alive, aliveIn } from './cases.ts';
import { catalogueKinds, type Kinds } from './kinds.ts';
import type { Edge, Network, Span, Vertex } from './network.ts';

const UNKNOWN: Span = { lo: 0, hi: null, value: null };

const byId = <T extends { readonly id: string }>(map: Readonly<Record<string, T>>): T[] =>
  Object.values(map).sort((a, b) => (a.id < b.id ? -1 : 1));

const vertexIdOf = (node: PlanNode): string =>
  node.place.on === 'connection' ? `${node.place.point}/${node.place.connection}` : node.id;

function direction(plan: Plan, from: PlanNode | undefined, to: PlanNode | undefined): Xyz | null {
  const a = from && nodePlace(plan, from)?.at;
  const b = to && nodePlace(plan, to)?.at;
  return a && b && distance3(a, b) > COINCIDENT_MM ? unit3(sub3(b, a)) : null;
}

function pipeParts(plan: Plan, pipe: Leg | Stretch) {
  if ('lengthMm' in pipe) {
    const lengthMm: Span = { lo: pipe.lengthMm.lo, hi: pipe.lengthMm.hi, value: null };
    return {
      kind: 'stretch',
      insulation: null,
      lengthMm,
      bends: pipe.bends,
      intoA: null,
      intoB: null,
      sureness: 'assumed',
    } as const;
  }
  const a = plan.nodes[pipe.a];
  const b = plan.nodes[pipe.b];
  const found = a && b && lengthBetween(plan, a, b);
  const lengthMm: Span = found ? { lo: found.lo, hi: found.hi, value: found.mm } : UNKNOWN;
  const intoA = direction(plan, a, b);
  // Taken from nothing, so that a way along an axis has no minus zero in it.
  const intoB = intoA && { x: 0 - intoA.x, y: 0 - intoA.y, z: 0 - intoA.z };
  return {
    kind: 'leg',
    insulation: pipe.insulation,
    lengthMm,
    bends: null,
    intoA,
    intoB,
    sureness: pipe.sureness,
  } as const;
}

function buildEdges(plan: Plan, alive: Alive, kinds: Kinds): Map<string, Edge> {
  const edges = new Map<string, Edge>();
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) {
      const run = plan.runs[pipe.run];
      const a = plan.nodes[pipe.a];
      const b = plan.nodes[pipe.b];
      if (!run || !a || !b || !alive.has(map, pipe.id)) continue;
      edges.set(pipe.id, {
        id: pipe.id,
        run: run.id,
        service: run.service,
        circuit: kinds.circuit(run.service),
        a: vertexIdOf(a),
        b: vertexIdOf(b),
        tube: pipe.tube,
        state: pipe.option === null ? 'there' : 'new',
        ...pipeParts(plan, pipe),
      });
    }
  }
  return new Map([...edges].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Nodes at which something that is cut off ended: where a live pipe still ends there, a cap stands. */
function cutEnds(plan: Plan, alive: Alive): Map<string, Tube[]> {
  const ends = new Map<string, Tube[]>();
  const cut = (node: string, tubes: Tube[]) => ends.set(node, [...(ends.get(node) ?? []), ...tubes]);
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of byId<Leg | Stretch>(plan[map])) {
      if (alive.state(pipe.id) !== 'cap' || alive.has(map, pipe.id)) continue;
      cut(pipe.a, [pipe.tube]);
      cut(pipe.b, [pipe.tube]);
    }
  }
  for (const node of Object.values(plan.nodes)) {
    if (node.place.on !== 'connection') continue;
    if (alive.state(node.place.point) === 'cap' && !alive.has('points', node.place.point)) cut(node.id, []);
  }
  return ends;
}

interface Gathered {
  nodes: PlanNode[];
  edges: string[];
  items: string[];
}

function facingOf(plan: Plan, kinds: Kinds, point: string, connection: string): Xyz | null {
  const record = plan.points[point];
  return record && kinds.faces(record) ? (connectionPlace(plan, point, connection)?.facing ?? null) : null;
}

function vertexFrom(
  plan: Plan,
  alive: Alive,
  kinds: Kinds,
  cuts: ReadonlyMap<string, readonly Tube[]>,
  id: string,
  at: Gathered,
): Vertex {
  const nodes = at.nodes.map((n) => n.id).sort();
  const first = at.nodes[0];
  const on = first?.place.on === 'connection' ? first.place : null;
  const stands = on !== null && alive.has('points', on.point);
  const connection = on && stands ? plan.points[on.point]?.connections.find((c) => c.id === on.connection) : undefined;
  return {
    id,
    nodes,
    place: (first && nodePlace(plan, first)) ?? null,
    point: on && stands ? on.point : null,
    connection: on && stands ? on.connection : null,
    service: connection?.service ?? null,
    facing: on && stands ? facingOf(plan, kinds, on.point, on.connection) : null,
    gone: on && !stands ? { point: on.point, connection: on.connection } : null,
    edges: at.edges.sort(),
    items: at.items.sort(),
    capped: at.edges.length > 0 && nodes.some((n) => cuts.has(n)),
    cutOff: nodes.flatMap((n) => cuts.get(n) ?? []),
  };
}

/**
 * Everything of a plan that stands in a case, as vertices and edges. A record that leans on something missing is left
 * out or has no place; nothing throws. Maps are in the order of ids, so the same plan gives the same network.
 */
export function buildNetwork(plan: Plan, chosen: Case, kinds: Kinds = catalogueKinds): Network {
  const alive = aliveIn(plan, chosen);
  const edges = buildEdges(plan, alive, kinds);
  const gathered = new Map<string, Gathered>();
  const vertexOf = new Map<string, string>();
  for (const node of Object.values(plan.nodes)) {
    if (!alive.has('nodes', node.id)) continue;
    const id = vertexIdOf(node);
    vertexOf.set(node.id, id);
    const at = gathered.get(id);
    if (at) at.nodes.push(node);
    else gathered.set(id, { nodes: [node], edges: [], items: [] });
  }
  const edgesOfRun = new Map<string, string[]>();
  for (const edge of edges.values()) {
    for (const end of edge.a === edge.b ? [edge.a] : [edge.a, edge.b]) gathered.get(end)?.edges.push(edge.id);
    const ofRun = edgesOfRun.get(edge.run);
    if (ofRun) ofRun.push(edge.id);
    else edgesOfRun.set(edge.run, [edge.id]);
  }
  for (const item of Object.values(plan.items)) {
    const vertex = vertexOf.get(item.node);
    if (vertex !== undefined && alive.has('items', item.id)) gathered.get(vertex)?.items.push(item.id);
  }
  const cuts = cutEnds(plan, alive);
  const ids = [...gathered.keys()].sort();
  const vertices = new Map(
    ids.map((id) => [id, vertexFrom(plan, alive, kinds, cuts, id, gathered.get(id) as Gathered)] as const),
  );
  return { plan, case: chosen, alive, kinds, vertices, edges, vertexOf, edgesOfRun };
}
