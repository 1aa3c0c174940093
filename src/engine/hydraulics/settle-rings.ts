import { eliminate, planElimination } from './elimination.ts';
import type { LinkLaw, LinkLoss } from './link-law.ts';
import type { NetPart, PlacedLink } from './net-parts.ts';
import type { Found } from './solve-tree.ts';

export interface Settled {
  readonly settled: boolean;
  readonly iterations: number;
  readonly work: number;
}

const MOST_TURNS = 100;
/** Where a friction law has a kink the turns may go to and fro across it: a part as small as this is no news to anybody. */
const CLOSE_ENOUGH = 1e-6;
/** Settled when all flows together changed by less than this part of themselves. */
const CLOSE = 1e-10;
/** m3/s: all flows together below this are rest. */
const REST = 1e-14;
const MOST_HALVINGS = 30;

/** One part under solution: its links, and the unknown heads by their place. */
interface Work {
  readonly links: readonly PlacedLink[];
  readonly laws: readonly LinkLaw[];
  readonly place: ReadonlyMap<number, number>;
  readonly pairs: readonly (readonly [number, number])[];
  readonly pairOf: readonly (number | null)[];
  readonly plan: ReturnType<typeof planElimination>;
  readonly demand: Float64Array;
  readonly found: Found;
}

function layOut(part: NetPart, demand: Float64Array, laws: readonly LinkLaw[], found: Found): Work {
  const held = new Set(part.held);
  const place = new Map(part.order.filter((n) => !held.has(n)).map((n, i) => [n, i] as const));
  const pairs: (readonly [number, number])[] = [];
  const pairOf = part.links.map((l) => {
    const [a, b] = [place.get(l.from), place.get(l.to)];
    return a === undefined || b === undefined ? null : pairs.push([a, b]) - 1;
  });
  const own = part.links.flatMap((l) => laws[l.index] ?? []);
  return {
    links: part.links,
    laws: own,
    place,
    pairs,
    pairOf,
    plan: planElimination(place.size, pairs),
    demand,
    found,
  };
}

/**
 * Heads that balance every node when link i carries `at[i]` and answers a change of head by 1 / slope. Writes the unknown
 * heads, gives what was spent.
 */
function balance(w: Work, flow: Float64Array, at: readonly LinkLoss[]): number {
  const diagonal = new Float64Array(w.place.size);
  const right = new Float64Array(w.place.size);
  const off = new Float64Array(w.pairs.length);
  for (const [node, i] of w.place) right[i] = -(w.demand[node] ?? 0);
  for (const [i, l] of w.links.entries()) {
    const { headM, slope } = at[i] ?? { headM: 0, slope: 1 };
    const ease = 1 / slope;
    const base = (flow[i] ?? 0) - headM * ease;
    const [a, b] = [w.place.get(l.from), w.place.get(l.to)];
    if (a !== undefined) {
      diagonal[a] = (diagonal[a] ?? 0) + ease;
      right[a] = (right[a] ?? 0) - base + (b === undefined ? ease * (w.found.head[l.to] ?? 0) : 0);
    }
    if (b !== undefined) {
      diagonal[b] = (diagonal[b] ?? 0) + ease;
      right[b] = (right[b] ?? 0) + base + (a === undefined ? ease * (w.found.head[l.from] ?? 0) : 0);
    }
    const k = w.pairOf[i];
    if (k !== null && k !== undefined) off[k] = -ease;
  }
  const { x, spent } = eliminate(w.plan, { diagonal, pairs: w.pairs, off, right });
  for (const [node, i] of w.place) w.found.head[node] = x[i] ?? 0;
  return spent;
}

const drop = (w: Work, l: PlacedLink): number => (w.found.head[l.from] ?? 0) - (w.found.head[l.to] ?? 0);

/**
 * How far along `step` to go. The change keeps every node balanced, so the heads fall out of the slope of the energy
 * along it; that slope rises all the way, and the place wanted is where it is small.
 */
function stride(
  w: Work,
  flow: Float64Array,
  step: Float64Array,
  start: readonly LinkLoss[],
): { part: number; work: number } {
  let work = 0;
  const slopeAt = (part: number): number => {
    work += w.links.length;
    return w.links.reduce((sum, l, i) => {
      const d = step[i] ?? 0;
      const headM = part === 0 ? start[i]?.headM : w.laws[i]?.loss((flow[i] ?? 0) + part * d).headM;
      return sum + ((headM ?? 0) - drop(w, l)) * d;
    }, 0);
  };
  const downhill = -slopeAt(0);
  if (!(downhill > 0) || slopeAt(1) <= downhill / 2) return { part: 1, work };
  let [lo, hi] = [0, 1];
  for (let turn = 0; turn < MOST_HALVINGS; turn++) {
    const part = (lo + hi) / 2;
    const slope = slopeAt(part);
    if (Math.abs(slope) <= downhill / 2) return { part, work };
    if (slope > 0) hi = part;
    else lo = part;
  }
  return { part: hi, work };
}

const total = (of: Float64Array): number => of.reduce((sum, q) => sum + Math.abs(q), 0);

/**
 * Flows and heads of a part with rings, or held at several places: the global gradient method (heads of all nodes at
 * once from the slopes of all links), with the step shortened where it would overshoot. Writes into `found`.
 */
export function settleRings(part: NetPart, demand: Float64Array, laws: readonly LinkLaw[], found: Found): Settled {
  const w = layOut(part, demand, laws, found);
  const count = w.links.length;
  let flow: Float64Array = new Float64Array(count);
  // First a net of straight stand-ins, which needs no guess of the way each flow goes.
  const straight = w.laws.map((law) => ({ headM: -law.liftM, slope: law.chord }));
  let work = balance(w, flow, straight) + count;
  flow = Float64Array.from(w.links, (l, i) => (drop(w, l) - (straight[i]?.headM ?? 0)) / (straight[i]?.slope ?? 1));
  for (let turn = 1; turn <= MOST_TURNS; turn++) {
    const at = w.laws.map((law, i) => law.loss(flow[i] ?? 0));
    work += balance(w, flow, at) + count;
    const step = Float64Array.from(w.links, (l, i) => (drop(w, l) - (at[i]?.headM ?? 0)) / (at[i]?.slope ?? 1));
    const { part: share, work: more } = stride(w, flow, step, at);
    work += more;
    flow = flow.map((q, i) => q + share * (step[i] ?? 0));
    if (!flow.every(Number.isFinite)) break;
    const size = total(flow);
    const wanted = turn < MOST_TURNS ? CLOSE : CLOSE_ENOUGH;
    if (size < REST || total(step) * share < wanted * size) {
      for (const [i, l] of w.links.entries()) found.flow[l.index] = flow[i] ?? 0;
      return { settled: true, iterations: turn, work };
    }
  }
  return { settled: false, iterations: MOST_TURNS, work };
}
