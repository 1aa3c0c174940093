import { otherEnd } from '../../network/network.ts';
import type { Section, Trace } from '../../network/trace.ts';
import type { Item, Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';

export type WayStep =
  | { readonly is: 'pipe'; readonly section: Section }
  | { readonly is: 'item'; readonly item: Item }
  | { readonly is: 'point'; readonly point: Point; readonly inAt: string; readonly outAt: string };

/** The main's stop tap, a place where what is drawn begins, or nothing drawn at all. */
export type Origin =
  | { readonly is: 'main'; readonly point: Point }
  | { readonly is: 'unseen'; readonly at: Point | null };

/** How water comes to a connection: from its origin, in the way it flows, through vessels and valves. */
export interface Way {
  readonly origin: Origin;
  readonly steps: readonly WayStep[];
}

const WATER = new Set(['cold', 'hot']);

/** Connections of a point at which its water comes in. Of a mixing valve the hot one first. */
export function inletsOf(given: Given, point: Point): string[] {
  const { kinds } = given.network;
  const inlets = point.connections.filter(
    (c) => WATER.has(kinds.circuit(c.service)) && kinds.part(point, c.id) === 'end',
  );
  const rank = (service: string): number => (kinds.circuit(service) === 'hot' ? 0 : 1);
  return inlets.sort((a, b) => rank(a.service) - rank(b.service)).map((c) => c.id);
}

function traceAt(given: Given, vertex: string): Trace | undefined {
  const first = given.network.vertices.get(vertex)?.edges[0];
  const circuit = first === undefined ? undefined : given.network.edges.get(first)?.circuit;
  return circuit !== undefined && WATER.has(circuit) ? given.traces.find((t) => t.circuit === circuit) : undefined;
}

/** Items on a section in the way it flows: those at its start, then at each corner and at its end. */
function itemsOf(given: Given, section: Section, first: boolean): Item[] {
  const { network, plan } = given;
  const met = first ? [section.from] : [];
  let at = section.from;
  for (const id of section.legs) {
    const edge = network.edges.get(id);
    if (!edge) continue;
    at = otherEnd(edge, at);
    met.push(at);
  }
  return met.flatMap((v) => (network.vertices.get(v)?.items ?? []).flatMap((id) => plan.items[id] ?? []));
}

function pipeSteps(given: Given, sections: readonly Section[]): WayStep[] {
  return sections.flatMap((section, i): WayStep[] => {
    const items = itemsOf(given, section, i === 0);
    return [{ is: 'pipe', section }, ...items.map((item): WayStep => ({ is: 'item', item }))];
  });
}

const known = new WeakMap<Given, Map<string, Way>>();

function walk(given: Given, point: Point, connection: string, seen: ReadonlySet<string>): Way {
  const vertex = `${point.id}/${connection}`;
  const trace = seen.has(vertex) ? undefined : traceAt(given, vertex);
  const sections = trace?.pathTo(vertex) ?? [];
  const [first] = sections;
  if (!trace || !first) return { origin: { is: 'unseen', at: null }, steps: [] };
  const pipes = pipeSteps(given, sections);
  const source = trace.sources.find((s) => s.vertex === first.from);
  const from = source && given.plan.points[source.point];
  if (!from || !source) return { origin: { is: 'unseen', at: null }, steps: pipes };
  if (from.kind === 'stop-tap') return { origin: { is: 'main', point: from }, steps: pipes };
  const [inlet] = inletsOf(given, from);
  if (inlet === undefined) return { origin: { is: 'unseen', at: from }, steps: pipes };
  const before = walk(given, from, inlet, new Set([...seen, vertex]));
  const through: WayStep = { is: 'point', point: from, inAt: inlet, outAt: source.connection };
  return { origin: before.origin, steps: [...before.steps, through, ...pipes] };
}

/**
 * The way of the water to a connection of a point, back to the main or to where the drawing stops. A mixing valve is
 * followed by its hot side. Worked out once for each plan, case and connection.
 */
export function wayTo(given: Given, point: Point, connection: string): Way {
  const kept = known.get(given) ?? new Map<string, Way>();
  known.set(given, kept);
  const key = `${point.id}/${connection}`;
  const way = kept.get(key) ?? walk(given, point, connection, new Set());
  kept.set(key, way);
  return way;
}

/** Points the water goes through, in the way it flows. */
export const pointsOn = (way: Way): Point[] => way.steps.flatMap((s) => (s.is === 'point' ? [s.point] : []));
export const pipesOn = (way: Way): Section[] => way.steps.flatMap((s) => (s.is === 'pipe' ? [s.section] : []));

/** Is any pipe on the way, or anything it goes through, of the option? What was all there before is left alone. */
export function isNewWay(given: Given, way: Way): boolean {
  return way.steps.some((s) => {
    if (s.is === 'point') return s.point.option !== null;
    if (s.is === 'item') return s.item.option !== null;
    return s.section.legs.some((leg) => given.network.edges.get(leg)?.state === 'new');
  });
}

/** Every pipe of it was looked at, from the main on. */
export const wholeWay = (way: Way): boolean => way.origin.is === 'main' && pipesOn(way).every((s) => s.kind === 'leg');
