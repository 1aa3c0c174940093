import { turnBetween } from './angles.ts';
import { type Edge, into, type Network, otherEnd } from './network.ts';

export interface Step {
  readonly edge: string;
  readonly from: string;
  readonly to: string;
}

/** A run as it is told, from source to end. */
export interface ToldRun {
  readonly steps: readonly Step[];
  /** Edges of the run off that way: it branches, closes on itself, or lies in pieces. */
  readonly aside: readonly string[];
  readonly start: string | null;
  readonly end: string | null;
}

function edgesAt(edges: readonly Edge[]): Map<string, Edge[]> {
  const at = new Map<string, Edge[]>();
  for (const e of edges) for (const v of new Set([e.a, e.b])) at.set(v, [...(at.get(v) ?? []), e]);
  return at;
}

/** How fit a place is to be told first: a source, then where it comes off another run, then where it was drawn first. */
function startRank(network: Network, vertex: string, edges: readonly Edge[], gathers: boolean): number {
  const v = network.vertices.get(vertex);
  const point = v?.point == null ? undefined : network.plan.points[v.point];
  const part = point && v?.connection != null ? network.kinds.part(point, v.connection) : undefined;
  if (part !== undefined) return part === 'source' ? 4 : -4;
  const joins = v !== undefined && v.edges.length > edges.length;
  const drawnFirst = edges.some((e) => e.a === vertex) ? 1 : 0;
  return drawnFirst + (joins ? (gathers ? -2 : 2) : 0);
}

function startOf(network: Network, at: ReadonlyMap<string, Edge[]>, gathers: boolean): string | null {
  const ends = [...at].filter(([, edges]) => edges.length === 1);
  const from = ends.length > 0 ? ends : [...at];
  const ranked = from
    .map(([vertex, edges]) => ({ vertex, rank: startRank(network, vertex, edges, gathers) }))
    .sort((a, b) => b.rank - a.rank || (a.vertex < b.vertex ? -1 : 1));
  return ranked[0]?.vertex ?? null;
}

/** Of several ways on, the one that turns least; the lower id where that is not known. */
function wayOn(here: string, before: Edge | undefined, open: readonly Edge[]): Edge | undefined {
  const back = before && into(before, here);
  const turn = (e: Edge): number => {
    const on = into(e, here);
    return back && on ? turnBetween(back, on) : 180;
  };
  return [...open].sort((a, b) => turn(a) - turn(b) || (a.id < b.id ? -1 : 1))[0];
}

/** The live legs and stretches of a run in the order they are told, source first. Empty for a run with nothing alive. */
export function orderedLegs(network: Network, run: string): ToldRun {
  const edges = (network.edgesOfRun.get(run) ?? []).flatMap((id) => network.edges.get(id) ?? []);
  const at = edgesAt(edges);
  const service = network.plan.runs[run]?.service;
  const start = startOf(network, at, service !== undefined && network.kinds.gathers(service));
  const told = new Set<string>();
  const steps: Step[] = [];
  let here = start;
  let before: Edge | undefined;
  while (here !== null) {
    const next: Edge | undefined = wayOn(
      here,
      before,
      (at.get(here) ?? []).filter((e) => !told.has(e.id)),
    );
    if (!next) break;
    told.add(next.id);
    const to = otherEnd(next, here);
    steps.push({ edge: next.id, from: here, to });
    before = next;
    here = to;
  }
  return { steps, aside: edges.filter((e) => !told.has(e.id)).map((e) => e.id), start, end: here };
}
