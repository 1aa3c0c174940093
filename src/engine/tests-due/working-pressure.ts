import type { Section, TraceEnd } from '../../network/trace.ts';
import type { Given } from '../given.ts';
import { arrivingBar, standingBar } from '../supply/inlets.ts';
import { type Way, wayTo } from '../supply/way-back.ts';

/** New water pipe that works at one pressure. */
export interface PressurePart {
  /** Highest standing pressure, bar; null where neither the main nor a reducer before it is told. */
  readonly bar: number | null;
  /** What sets it: "the main", or the reducer it lies behind. */
  readonly by: string;
  /** Kinds of tube of it. */
  readonly tubes: ReadonlySet<string>;
}

/** As `arrivingBar` calls it too. */
export const THE_MAIN = 'the main';
const CIRCUITS = new Set(['cold', 'hot']);
const UNSEEN: Way = { origin: { is: 'unseen', at: null }, steps: [] };

/** How the water comes to the start of a section: the way to something it feeds, cut off before it. */
function wayBefore(given: Given, ends: ReadonlyMap<string, TraceEnd>, section: Section): Way {
  const end = ends.get(section.serves[0] ?? '');
  const point = end && given.plan.points[end.point];
  if (!end || !point) return UNSEEN;
  const way = wayTo(given, point, end.connection);
  const at = way.steps.findIndex((s) => s.is === 'pipe' && s.section.id === section.id);
  return at < 0 ? UNSEEN : { origin: way.origin, steps: way.steps.slice(0, at) };
}

/**
 * New pipe of hot and cold, by the highest pressure that can stand in it. A pipe in which a reducer lies, one that feeds
 * nothing and one without a way back to the main are tested at what the main has: that is never too little.
 */
export function pressureParts(given: Given, services: ReadonlySet<string>): PressurePart[] {
  const fresh = new Map(
    [...given.network.edges.values()]
      .filter((e) => e.state === 'new' && services.has(e.service))
      .map((e) => [e.id, e.tube.kind] as const),
  );
  if (fresh.size === 0) return [];
  const main = { bar: standingBar(given, UNSEEN), by: THE_MAIN };
  const parts = new Map<string, PressurePart & { readonly tubes: Set<string> }>();
  const add = (edge: string, { bar, by }: { readonly bar: number | null; readonly by: string }): void => {
    const kind = fresh.get(edge);
    if (kind === undefined) return;
    fresh.delete(edge);
    const key = `${bar}|${by}`;
    const part = parts.get(key) ?? { bar, by, tubes: new Set() };
    parts.set(key, part);
    part.tubes.add(kind);
  };
  for (const trace of given.traces.filter((t) => CIRCUITS.has(t.circuit))) {
    const ends = new Map(trace.ends.map((e) => [e.vertex, e] as const));
    for (const section of trace.sections) {
      if (!section.legs.some((leg) => fresh.has(leg))) continue;
      const arrives = arrivingBar(given, wayBefore(given, ends, section)) ?? main;
      for (const leg of section.legs) add(leg, arrives);
    }
  }
  for (const edge of [...fresh.keys()]) add(edge, main);
  return [...parts.values()].sort(
    (a, b) => Number(b.by === THE_MAIN) - Number(a.by === THE_MAIN) || (a.by < b.by ? -1 : 1),
  );
}
