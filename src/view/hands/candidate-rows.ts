import { services } from '../../catalogue/services.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { floorZ } from '../../geometry/heights.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import { nameOf } from '../panels/name-of.ts';

/** One of the things that lie under a tap. */
export interface CandidateRow {
  readonly chooses: Selected;
  /** Its own records among what was tapped: where one of them is chosen, so is this row. */
  readonly holds: readonly string[];
  readonly name: string;
  /** Its name where that is told apart from the kind of pipe; empty where not. */
  readonly more: string;
  /** Above the floor, mm; null where it has none. */
  readonly height: string | null;
  readonly service: string | null;
  readonly topMm: number;
}

interface Heights {
  readonly lo: number;
  readonly hi: number;
}

const NOWHERE = Number.NEGATIVE_INFINITY;

function pipeHeights(plan: Plan, nodes: readonly string[]): Heights | null {
  const z = nodes.flatMap((id) => {
    const node = plan.nodes[id];
    const place = node && nodePlace(plan, node);
    return place ? [place.at.z - (floorZ(plan, place.storey) ?? 0)] : [];
  });
  return z.length === 0 ? null : { lo: Math.min(...z), hi: Math.max(...z) };
}

function heightsOf(plan: Plan, { map, id }: Selected): Heights | null {
  if (map === 'legs' || map === 'stretches') {
    const pipe = plan[map][id];
    return pipe ? pipeHeights(plan, [pipe.a, pipe.b]) : null;
  }
  if (map === 'nodes') return pipeHeights(plan, [id]);
  if (map === 'items') return pipeHeights(plan, [plan.items[id]?.node ?? '']);
  const point = map === 'points' ? plan.points[id] : undefined;
  const z = point && pointFrame(plan, point)?.origin.z;
  if (!point || z === undefined) return null;
  const off = z - (floorZ(plan, point.storey) ?? 0);
  return { lo: off, hi: off };
}

function sayHeights(h: Heights | null): string | null {
  if (!h) return null;
  const [lo, hi] = [Math.round(h.lo), Math.round(h.hi)];
  return lo === hi ? String(lo) : `${lo} to ${hi}`;
}

const runOf = (plan: Plan, { map, id }: Selected): string | undefined =>
  map === 'legs' ? plan.legs[id]?.run : map === 'stretches' ? plan.stretches[id]?.run : map === 'runs' ? id : undefined;

/** All of one run that was tapped, as one row: its kind and size, and how high it lies there. */
function pipeRow(plan: Plan, run: string, parts: readonly Selected[]): CandidateRow {
  const pipes = parts.filter((p) => p.map !== 'runs');
  const heights = pipes.map((p) => heightsOf(plan, p)).filter((h) => h !== null);
  const whole =
    heights.length === 0
      ? null
      : { lo: Math.min(...heights.map((h) => h.lo)), hi: Math.max(...heights.map((h) => h.hi)) };
  const record = plan.runs[run];
  const service = record?.service ?? '';
  const leg = pipes.map((p) => (p.map === 'legs' ? plan.legs[p.id] : undefined)).find((l) => l !== undefined);
  const label = services.get(service)?.label ?? service;
  const size = leg ? sayTubeSize(leg.tube) : 'size not known';
  return {
    chooses: { map: 'runs', id: run },
    holds: parts.map((p) => p.id),
    name: `${label} ${size}`,
    more: record?.name ?? '',
    height: sayHeights(whole),
    service,
    topMm: whole?.hi ?? NOWHERE,
  };
}

function row(plan: Plan, thing: Selected): CandidateRow {
  const heights = heightsOf(plan, thing);
  return {
    chooses: thing,
    holds: [thing.id],
    name: nameOf(plan, thing),
    more: '',
    height: sayHeights(heights),
    service: null,
    topMm: heights?.hi ?? NOWHERE,
  };
}

/** What a hand can mean by itself; the rest is what these stand in, and comes last. */
const THINGS: ReadonlySet<Selected['map']> = new Set(['points', 'items', 'blobRefs']);

const firstWord = (r: CandidateRow): string => `${r.height ?? ''} ${r.chooses.id}`;

/**
 * What lies under a tap, a run with its legs and corners as one: the highest first, what has no height of its own last.
 * Empty where there is nothing to choose between, as with one pipe in its room.
 */
export function candidateRows(plan: Plan, candidates: readonly Selected[]): readonly CandidateRow[] {
  const living = candidates.filter(({ map, id }) => plan[map][id as never] !== undefined);
  const byRun = new Map<string, Selected[]>();
  const others: Selected[] = [];
  for (const c of living) {
    const run = runOf(plan, c);
    if (run !== undefined) byRun.set(run, [...(byRun.get(run) ?? []), c]);
    // A corner is reached through the run it is of, by tapping again.
    else if (c.map !== 'nodes') others.push(c);
  }
  const pipes = [...byRun].map(([run, parts]) => pipeRow(plan, run, parts));
  const things = others.filter((o) => THINGS.has(o.map)).map((o) => row(plan, o));
  if (pipes.length < 2 && things.length < 2) return [];
  const round = others.filter((o) => !THINGS.has(o.map)).map((o) => row(plan, o));
  const standing = [...pipes, ...things].sort((a, b) => b.topMm - a.topMm || (firstWord(a) < firstWord(b) ? -1 : 1));
  return [...standing, ...round];
}

/** "Gas 22, 2420" */
export const sayRow = ({ name, height }: CandidateRow): string => (height === null ? name : `${name}, ${height}`);
