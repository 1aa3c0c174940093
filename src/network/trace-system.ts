import { addSpans, type Chain, cutIntoChains } from './chains.ts';
import { type CircuitPart, circuitParts, runsOf } from './circuit-parts.ts';
import { fittingAt } from './fitting-at.ts';
import type { Network } from './network.ts';
import { type Branch, shortestTree, type Tree, wayTo } from './shortest-tree.ts';
import type { Illegal, Ring, Section, Trace } from './trace.ts';

interface TracedPart {
  readonly part: CircuitPart;
  readonly tree: Tree;
  readonly sections: readonly Section[];
  readonly rings: readonly Ring[];
}

const idOf = (chain: Chain, gathers: boolean): string => (gathers ? chain.edges.at(-1) : chain.edges[0])?.id ?? '';

/** The ring a closing branch makes: both ways from where they part, and the branch itself last. */
function ringOf(tree: Tree, closing: Branch, gathers: boolean): Ring {
  const one = wayTo(tree, closing.chain.from);
  const other = wayTo(tree, closing.chain.to);
  let shared = 0;
  while (shared < one.length && shared < other.length && one[shared] === other[shared]) shared++;
  const round = [...one.slice(shared), ...other.slice(shared), closing];
  const edges = round.flatMap((b) => b.chain.edges);
  return {
    sections: round.map((b) => idOf(b.chain, gathers)),
    edges: edges.map((e) => e.id).sort(),
    vertices: [...new Set(edges.flatMap((e) => [e.a, e.b]))].sort(),
  };
}

function tracePart(network: Network, part: CircuitPart): TracedPart {
  const { root, gathers } = part;
  if (root === null) return { part, tree: { branches: [], to: new Map(), closing: [] }, sections: [], rings: [] };
  const tree = shortestTree(root, cutIntoChains(network, part.edges));
  const rings = tree.closing.map((c) => ringOf(tree, c, gathers));
  const onRing = new Set(rings.flatMap((r) => r.sections));
  const serves = new Map<Branch, string[]>();
  for (const { vertex } of gathers ? part.sources : part.ends) {
    for (const branch of wayTo(tree, vertex)) {
      const list = serves.get(branch);
      if (list) list.push(vertex);
      else serves.set(branch, [vertex]);
    }
  }
  const sections = [...tree.branches, ...tree.closing].map((branch): Section => {
    const { chain, parent } = branch;
    const edges = gathers ? [...chain.edges].reverse() : chain.edges;
    const first = edges[0];
    if (!first) throw new Error('a chain has at least one edge');
    const id = idOf(chain, gathers);
    return {
      id,
      kind: first.kind,
      legs: edges.map((e) => e.id),
      service: first.service,
      runs: runsOf(edges),
      from: gathers ? chain.to : chain.from,
      to: gathers ? chain.from : chain.to,
      tube: first.tube,
      lengthMm: addSpans(edges.map((e) => e.lengthMm)),
      parent: parent && idOf(parent.chain, gathers),
      gathers,
      serves: [...(serves.get(branch) ?? [])].sort(),
      onRing: onRing.has(id),
      sound: part.sound,
    };
  });
  return { part, tree, sections, rings };
}

function drawnIllegal(network: Network, part: TracedPart): Illegal[] {
  const found: Illegal[] = [];
  const edge = (id: string) => network.edges.get(id) ?? [];
  for (const ring of part.rings) {
    const runs = runsOf(ring.edges.flatMap(edge));
    const say = 'These pipes close a ring, so it can flow both ways round.';
    found.push({ kind: 'ring', runs, points: [], edges: ring.edges, vertices: ring.vertices, say });
  }
  for (const s of part.sections) {
    if (s.tube.size !== null) continue;
    const say = 'The size of this pipe is not known.';
    found.push({ kind: 'sizeUnknown', runs: s.runs, points: [], edges: s.legs, vertices: [s.from, s.to], say });
  }
  const vertices = new Set(part.part.edges.flatMap((e) => [e.a, e.b]));
  for (const vertex of [...vertices].sort()) {
    if (!network.vertices.has(vertex)) continue;
    const fitting = fittingAt(network, vertex);
    if (fitting.is !== 'unresolved') continue;
    const runs = runsOf(fitting.edges.flatMap(edge));
    found.push({ kind: 'unresolved', runs, points: [], edges: fitting.edges, vertices: [vertex], say: fitting.why });
  }
  return found;
}

/**
 * Follows one circuit (see Edge.circuit) from its source to its ends. Every edge of it is in a section or in `unreached`.
 * What cannot stay as drawn is in `illegal`; the rest is traced all the same. Never throws on a bad network.
 */
export function traceSystem(network: Network, circuit: string): Trace {
  const parts = circuitParts(network, circuit).map((part) => tracePart(network, part));
  const sections = parts.flatMap((p) => p.sections);
  const byId = new Map(sections.map((s) => [s.id, s] as const));
  const sectionOf = new Map(sections.flatMap((s) => s.legs.map((leg) => [leg, s.id] as const)));
  const unreached = parts.flatMap((p) => p.part.edges.filter((e) => !sectionOf.has(e.id)).map((e) => e.id));
  return {
    circuit,
    sources: parts.flatMap((p) => p.part.sources),
    ends: parts.flatMap((p) => p.part.ends),
    deadEnds: parts.flatMap((p) => p.part.deadEnds),
    sections,
    sectionOf,
    rings: parts.flatMap((p) => p.rings),
    unreached,
    illegal: parts.flatMap((p) => [...p.part.illegal, ...drawnIllegal(network, p)]),
    pathTo(vertex) {
      const edge = network.vertices.get(vertex)?.edges.find((id) => sectionOf.has(id));
      const within = edge === undefined ? undefined : byId.get(sectionOf.get(edge) ?? '');
      const part = parts.find((p) => p.tree.to.has(vertex));
      const ids = part ? wayTo(part.tree, vertex).map((b) => idOf(b.chain, part.part.gathers)) : [];
      const way = ids.flatMap((id) => byId.get(id) ?? []);
      if (way.length > 0) return way[0]?.gathers ? way.reverse() : way;
      const isRoot = parts.some((p) => p.part.root === vertex);
      if (!within || isRoot) return [];
      const out: Section[] = [];
      for (let s: Section | undefined = within; s; s = s.parent === null ? undefined : byId.get(s.parent)) out.push(s);
      return within.gathers ? out : out.reverse();
    },
  };
}
