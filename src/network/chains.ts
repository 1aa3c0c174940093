import { type Edge, type Network, otherEnd, type Span, sameTube } from './network.ts';

/** Edges one after the other with nothing changing between them, from one cut to the next. */
export interface Chain {
  readonly edges: readonly Edge[];
  readonly from: string;
  readonly to: string;
}

/** The edges of one circuit at each vertex, in the order of ids. */
export function edgesByVertex(edges: readonly Edge[]): Map<string, Edge[]> {
  const at = new Map<string, Edge[]>();
  for (const edge of edges) {
    for (const v of edge.a === edge.b ? [edge.a] : [edge.a, edge.b]) {
      const list = at.get(v);
      if (list) list.push(edge);
      else at.set(v, [edge]);
    }
  }
  return at;
}

function isCut(network: Network, vertex: string, edges: readonly Edge[]): boolean {
  const [one, other] = edges;
  const v = network.vertices.get(vertex);
  if (!v || !one || !other || edges.length !== 2 || v.edges.length !== 2 || v.point !== null || v.gone !== null)
    return true;
  return (
    one.kind === 'stretch' ||
    other.kind === 'stretch' ||
    !sameTube(one.tube, other.tube) ||
    one.service !== other.service
  );
}

/** Cuts the edges of one circuit into chains. A ring that nothing cuts is one chain from its first vertex to itself. */
export function cutIntoChains(network: Network, edges: readonly Edge[]): Chain[] {
  const at = edgesByVertex(edges);
  const done = new Set<string>();
  const chains: Chain[] = [];
  const walk = (start: string, first: Edge): void => {
    const walked = [first];
    done.add(first.id);
    let here = otherEnd(first, start);
    while (here !== start && !isCut(network, here, at.get(here) ?? [])) {
      const next = at.get(here)?.find((e) => !done.has(e.id));
      if (!next) break;
      done.add(next.id);
      walked.push(next);
      here = otherEnd(next, here);
    }
    chains.push({ edges: walked, from: start, to: here });
  };
  const vertices = [...at.keys()].sort();
  const startAt = (vertex: string): void => {
    for (const edge of at.get(vertex) ?? []) if (!done.has(edge.id)) walk(vertex, edge);
  };
  for (const v of vertices) if (isCut(network, v, at.get(v) ?? [])) startAt(v);
  for (const v of vertices) startAt(v);
  return chains;
}

export const reversed = (chain: Chain): Chain => ({
  edges: [...chain.edges].reverse(),
  from: chain.to,
  to: chain.from,
});

export function addSpans(spans: readonly Span[]): Span {
  return spans.reduce(
    (sum, s) => ({
      lo: sum.lo + s.lo,
      hi: sum.hi === null || s.hi === null ? null : sum.hi + s.hi,
      value: sum.value === null || s.value === null ? null : sum.value + s.value,
    }),
    { lo: 0, hi: 0, value: 0 } as Span,
  );
}

/** What the shorter way is judged by: the best single figure, else the least. */
export function weight(chain: Chain): number {
  const total = addSpans(chain.edges.map((e) => e.lengthMm));
  return total.value ?? total.lo;
}
