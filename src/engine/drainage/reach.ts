import { riseBetween } from '../../geometry/heights.ts';
import { openingBox } from '../../geometry/opening-box.ts';
import { rememberWhile } from '../../geometry/remember.ts';
import { distance } from '../../geometry/vec.ts';
import type { Standing } from '../../geometry/wall-frame.ts';
import { quantise } from '../../plan/units.ts';
import { constant } from '../../reference/figure.ts';
import { between, type Quantity, roundQuantity } from '../../report/quantity.ts';
import type { ReachAnswer, ReachBlock } from '../../report/report.ts';
import { standsOn } from '../building/stands-on.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { condensateFalls } from './falls-wanted.ts';
import { objectionsTo, REACH_SERVICES, type ReachService, reachEnds, reachTails, type Tail } from './reach-ends.ts';
import { FURTHEST_MM, MOST_ENDS, UNDER_TAIL_MM } from './reach-figures.ts';
import { wayGraph } from './reach-graph.ts';
import type { WayGraph } from './reach-net.ts';
import { compareIds } from './reach-order.ts';
import { sayReach } from './reach-say.ts';
import { type Wish, waysFrom } from './reach-search.ts';
import { type Heights, type Tried, tryUnder, tryWay } from './reach-tried.ts';
import { wayUnder } from './reach-under.ts';

const WISHES: readonly Wish[] = ['inside', 'outside'];
const RANK = { pass: 0, check: 1, cantTell: 2, stop: 3 } as const;
/** Outside, no longer than this, mm. */
const MOST_OUTSIDE_MM = constant('condensate-limits', 'outside length', 'm') * 1000;

/** What counts as falling all the way for relief water, which has no figure of its own: that of other hot discharges. */
const RELIEF_FALL = constant('discharge-limits', 'fall', 'mmPerM');

interface Falls {
  readonly wanted: number;
  readonly least: number;
}

/** Null where the edition the job has pinned is not here. */
function fallsFor(given: Given, service: ReachService): Falls | null {
  if (service === 'boilerRelief') return { wanted: RELIEF_FALL, least: RELIEF_FALL };
  const { wanted, least } = condensateFalls(given.plan.basis.editions);
  return wanted.is === 'known' && least.is === 'known' ? { wanted: wanted.lo, least: least.lo } : null;
}

/** A way to one end on the side wished for, round the openings to be avoided; null where there is none. */
type Ways = (wish: Wish, avoid: ReadonlySet<string>) => Tried['pieces'] | null;
const NONE: ReadonlySet<string> = new Set();

interface Search {
  readonly given: Given;
  readonly standing: Standing;
  readonly service: ReachService;
  readonly falls: Falls;
}

const heightOf = ({ place }: Tail) => ({ z: place.at.z, lo: place.zLo, hi: place.zHi, doubts: place.doubts });

function heightsOf({ given, falls, service }: Search, tail: Tail, end: Tail): Heights {
  const tailH = heightOf(tail);
  return {
    tailZ: { lo: tailH.lo, mm: tailH.z, hi: tailH.hi },
    rise: riseBetween(heightOf(end), tailH),
    mmPerM: falls,
    floorZ: given.plan.storeys[tail.point.storey]?.floorMm ?? 0,
    dropMm: UNDER_TAIL_MM,
    mayBeBuried: service === 'condensate',
  };
}

const opensFloor = (t: Tried): number => Number(t.how === 'under' && t.state !== 'stop');

/** The better of two ways: how it stands, then whether a floor stays shut, then how much is in the way, then how long. */
const byBetter = (a: Tried, b: Tried): number =>
  RANK[a.state] - RANK[b.state] ||
  opensFloor(a) - opensFloor(b) ||
  a.blocks.length - b.blocks.length ||
  a.told.lengthMm - b.told.lengthMm;

function tries(search: Search, tail: Tail, end: Tail, ways: Ways): Tried[] {
  const { given } = search;
  const heights = heightsOf(search, tail, end);
  const storey = given.plan.storeys[tail.point.storey];
  const above = tail.point.size.heightMm - tail.connection.at.z;
  const highestZ = storey ? storey.floorMm + storey.ceilingMm - above : Number.POSITIVE_INFINITY;
  const ask = { plan: given.plan, storey: tail.point.storey, heights, highestZ };
  const found = WISHES.flatMap((how) => {
    const pieces = ways(how, NONE);
    if (!pieces) return [];
    const first = tryWay(ask, how, pieces);
    // A sill can turn out too low once the end is known: another way may go round it.
    const avoid = sillsIn(given, first, heights.floorZ);
    const round = avoid.size > 0 ? ways(how, avoid) : null;
    return round ? [first, tryWay(ask, how, round)] : [first];
  });
  // Relief water is to be seen where it runs: it is sent through no void.
  const under = search.service === 'condensate' && wayUnder(given.plan, search.standing, tail.place.at, end.place.at);
  if (under) found.push(tryUnder(ask, under));
  return found.sort(byBetter);
}

/** Openings in the way that a pipe could pass under if it need not lie so high. */
function sillsIn(given: Given, tried: Tried, floorZ: number): ReadonlySet<string> {
  const sills = tried.told.blocks.flatMap((b) => (b.id === null ? [] : [b.id]));
  return new Set(sills.filter((id) => (openingBox(given.plan, id)?.bottomZ ?? floorZ) > floorZ));
}

const mm = (lo: number, hi: number, value: number): Quantity =>
  roundQuantity(between(Math.min(lo, value), Math.max(hi, value), 'mm', 0, 'derived', value));

const worstOf = (states: readonly ReachAnswer['state'][]): ReachAnswer['state'] =>
  states.reduce((a, b) => (RANK[b] > RANK[a] ? b : a), 'pass');

function answerFor(search: Search, tail: Tail, end: Tail, ways: Ways): ReachAnswer {
  const { given, service, falls } = search;
  const objections = objectionsTo(end, service);
  const all = tries(search, tail, end, ways);
  const [best] = all;
  const base = { appliance: tail.point.id, service, end: end.point.id, storey: tail.point.storey };
  if (!best) {
    const say = ['no way was found', ...objections.map((o) => o.say)].join('; ');
    const state = worstOf(['cantTell', ...objections.map((o) => o.state)]);
    const nothing = { lengthM: null, dropMm: null, arrivesMm: null, leastHeightMm: null };
    return { ...base, ...nothing, state, way: [], outsideM: null, blocks: [], say };
  }
  const { told, worst, best: most, leastZ } = best;
  const tooLow = most.arrivesMm < 0;
  const blocks: ReachBlock[] = [...best.blocks];
  if (tooLow) {
    const up = end.place.at.z > tail.place.at.z;
    const short = Math.round(up ? end.place.at.z - tail.place.at.z : -told.arrivesMm);
    const what = up ? `lies ${short} higher than the tail` : `arrives ${short} too low`;
    blocks.unshift({ what, ids: [end.point.id], storey: tail.point.storey, at: end.place.at });
  }
  const tooFar = service === 'condensate' && best.outsideMm > MOST_OUTSIDE_MM;
  const state = worstOf([best.state, ...(tooFar ? (['check'] as const) : []), ...objections.map((o) => o.state)]);
  const floorZ = given.plan.storeys[tail.point.storey]?.floorMm ?? 0;
  const reached = best.state !== 'stop';
  return {
    ...base,
    state,
    way: told.places.map((p) => ({ x: quantise(p.x), y: quantise(p.y), z: quantise(p.z) })),
    lengthM: roundQuantity(
      between(told.lengthMm / 1000, told.lengthMm / 1000, 'm', 1, 'derived', told.lengthMm / 1000),
    ),
    outsideM: roundQuantity(
      between(best.outsideMm / 1000, best.outsideMm / 1000, 'm', 1, 'derived', best.outsideMm / 1000),
    ),
    dropMm: mm((told.lengthMm * falls.least) / 1000, told.fallMm, told.fallMm),
    arrivesMm: mm(worst.arrivesMm, most.arrivesMm, told.arrivesMm),
    leastHeightMm: leastZ && mm(leastZ.lo - floorZ, leastZ.hi - floorZ, leastZ.mm - floorZ),
    blocks: blocks.map((b) => ({ ...b, at: { x: quantise(b.at.x), y: quantise(b.at.y), z: quantise(b.at.z) } })),
    say: sayReach({ best, others: all.slice(1), reached, tooLow, blocks, objections, tooFar, service, floorZ }),
  };
}

/** A street of houses has many drains: only the nearest of this house are of any use, in the order of their ids. */
function nearestEnds(tail: Tail, ends: readonly Tail[]): readonly Tail[] {
  const far = (t: Tail): number => distance(tail.place.at, t.place.at);
  const here = ends.filter((e) => far(e) <= FURTHEST_MM);
  const near = new Set(here.sort((a, b) => far(a) - far(b) || compareIds(a.point, b.point)).slice(0, MOST_ENDS));
  return ends.filter((e) => near.has(e));
}

/** Where everything asked for on one storey stands in the graph of that storey. */
interface Asked {
  readonly graph: WayGraph;
  readonly at: ReadonlyMap<string, number>;
}

const keyOf = (t: Tail): string => `${t.point.id}/${t.connection.id}`;

function askedOn(given: Given, standing: Standing, storey: string, places: readonly Tail[]): Asked {
  const at = new Map(places.map((t, i) => [keyOf(t), i] as const));
  return {
    graph: wayGraph(
      given.plan,
      storey,
      standing,
      places.map((t) => t.place.at),
    ),
    at,
  };
}

function answers(given: Given): ReachAnswer[] {
  if (given.case.when === 'before') return [];
  const standing = standingBuilding(given.network);
  const asked = REACH_SERVICES.map((service) => ({
    service,
    tails: reachTails(given, service),
    ends: reachEnds(given, service),
    falls: fallsFor(given, service),
  })).filter((a) => a.tails.length > 0 && a.ends.length > 0);
  const storeys = [...new Set(asked.flatMap((a) => a.tails.map((t) => t.point.storey)))].sort();
  return storeys.flatMap((storey) => {
    const mine = asked.map((a) => ({ ...a, tails: a.tails.filter((t) => t.point.storey === storey) }));
    const places = new Map(mine.flatMap((a) => [...a.tails, ...a.ends]).map((t) => [keyOf(t), t] as const));
    const { graph, at } = askedOn(given, standing, storey, [...places.values()]);
    return mine.flatMap(({ service, tails, ends, falls }) => {
      if (!falls) return [];
      const search = { given, standing, service, falls };
      return tails.flatMap((tail) => {
        const from = at.get(keyOf(tail)) ?? 0;
        const fall = {
          z: tail.place.at.z - UNDER_TAIL_MM,
          mmPerM: falls.wanted,
          floorZ: given.plan.storeys[storey]?.floorMm ?? 0,
        };
        const near = nearestEnds(tail, ends);
        const to = near.map((end) => at.get(keyOf(end)) ?? 0);
        const first = new Map(WISHES.map((wish) => [wish, waysFrom(graph, from, to, wish, fall, NONE)] as const));
        return near.map((end, i) =>
          answerFor(search, tail, end, (wish, avoid) =>
            avoid.size === 0
              ? (first.get(wish)?.[i] ?? null)
              : (waysFrom(graph, from, to.slice(i, i + 1), wish, fall, avoid)[0] ?? null),
          ),
        );
      });
    });
  });
}

/** Nothing of the pipes already drawn is asked here, so routing one leaves every answer as it was. */
const toldAgain = rememberWhile(standsOn, answers);
const told = new WeakMap<Given, readonly ReachAnswer[]>();

/**
 * For every appliance that gives off condensate or relief water, and every drain that could take it: the best way found
 * and what stands in it; before the work
 * there is nothing to find. Storey by storey; pure, and worked out once for each building and case.
 */
export function reachOf(given: Given): readonly ReachAnswer[] {
  const known = told.get(given) ?? toldAgain(given);
  told.set(given, known);
  return known;
}
