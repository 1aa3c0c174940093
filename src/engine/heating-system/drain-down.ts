import type { Edge, Vertex } from '../../network/network.ts';
import { tube } from '../../reference/tubes.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { litresPerMetre } from '../heating/content.ts';
import { pocketsOf } from '../heating/pockets.ts';
import { type WaterContent, waterContents } from './water-content.ts';
import { highTraps, levelsOf, litresPast, lowTraps, type Trap } from './water-levels.ts';

/** Where the house before the new pipe lies: what drains it nobody saw. */
const BEHIND = new Set(['old-tails', 'join-point']);

export interface DrainDown {
  readonly content: WaterContent;
  readonly cocks: readonly Vertex[];
  /** Lowest drain cock; null where none is drawn. */
  readonly lowestCock: Vertex | null;
  /** Lowest place of the drawn pipes; null where none has a height. */
  readonly lowest: Vertex | null;
  /** Old pipe whose ways to drain were not seen. */
  readonly unseen: boolean;
  /** Litres that run out with every cock open; null where nothing drawn or known drains it. */
  readonly runsOut: Quantity | null;
  /** Litres of drawn pipe that stay. */
  readonly stays: number;
  readonly highs: readonly Trap[];
  readonly lows: readonly Trap[];
}

function lowestOf(of: readonly Vertex[]): Vertex | null {
  return of.reduce<Vertex | null>((low, v) => {
    if (v.place === null) return low;
    return low?.place && low.place.at.z <= v.place.at.z ? low : v;
  }, null);
}

const litresOf = (): ((edge: Edge) => number) => {
  const known = new Map<string, number>();
  return (edge) => {
    const key = `${edge.tube.kind}|${edge.tube.size}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const bore = tube(edge.tube.kind, edge.tube.size)?.boreMm ?? null;
    const per = bore === null ? 0 : litresPerMetre(bore);
    known.set(key, per);
    return per;
  };
};

function drainOf(given: Given, content: WaterContent): DrainDown {
  const { system } = content;
  const per = litresOf();
  const all = [...system.vertices.values()];
  const isCock = (v: Vertex): boolean => v.items.some((i) => given.plan.items[i]?.kind === 'drain-cock');
  const isBehind = (v: Vertex): boolean => v.point !== null && BEHIND.has(given.plan.points[v.point]?.kind ?? '');
  const cocks = all.filter(isCock);
  const unseen = all.some(isBehind) || system.edges.some((e) => e.kind === 'stretch');
  const unseenEnds = new Set(system.edges.flatMap((e) => (e.kind === 'stretch' ? [e.a, e.b] : [])));
  const levels = levelsOf(given, system, {
    turned: true,
    through: () => true,
    opens: (v) => isCock(v) || isBehind(v) || unseenEnds.has(v.id),
  });
  const drains = cocks.length > 0 || unseen;
  const stays = drains
    ? pocketsOf(levels)
        .filter((p) => p.last)
        .reduce((sum, p) => sum + litresPast(system, levels, p, per), 0)
    : 0;
  const { lo, hi, sureness } = content.litres;
  const less = (n: number): number => Math.max(0, n - stays);
  const runsOut = between(less(lo), hi === null ? null : less(hi), 'litres', 0, sureness);
  return {
    content,
    cocks,
    lowestCock: lowestOf(cocks),
    lowest: lowestOf(all),
    unseen,
    runsOut: drains ? runsOut : null,
    stays,
    highs: highTraps(given, system, per),
    lows: lowTraps(given, system, per),
  };
}

const drained = new WeakMap<Given, readonly DrainDown[]>();

/** How each heating system is emptied and bled. */
export function drainDowns(given: Given): readonly DrainDown[] {
  const found = drained.get(given);
  if (found) return found;
  const made = waterContents(given).map((c) => drainOf(given, c));
  drained.set(given, made);
  return made;
}
