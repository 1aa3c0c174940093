import { pointFrame } from '../../geometry/hosting.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { tube } from '../../reference/tubes.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { type BendsAlong, bendsAlong } from './bends-along.ts';
import { type Drain, type DrainStep, drainsOf, kindOf } from './drains.ts';
import { isPlumb } from './gradient.ts';

const VESSELS = new Set(['cylinder', 'preheat-vessel']);
const VALVES = new Set([...VESSELS, 'inlet-group']);

/** From a valve to its tundish, or wherever it goes instead. */
export interface ValvePipe extends Drain {
  /** Null where it starts in the air. */
  readonly from: Point | null;
  readonly to: Point | null;
}

/** From a tundish to its end. */
export interface TundishPipe extends Drain {
  readonly tundish: Point | null;
  /** Unvented vessels whose valves let out into it. */
  readonly vessels: readonly Point[];
  /** Only boilers let out into it: the table of sizes is not for them. */
  readonly boilersOnly: boolean;
  readonly lengthM: Quantity;
  readonly bends: BendsAlong;
  /** Straight down below the tundish before the first bend, mm; null where a place is missing. */
  readonly straightDropMm: number | null;
  /** Nominal sizes on the way, mm; null for one nobody read or that is no copper. */
  readonly sizes: readonly (number | null)[];
}

export interface Discharges {
  readonly vessels: readonly Point[];
  readonly valvePipes: readonly ValvePipe[];
  readonly tundishPipes: readonly TundishPipe[];
  readonly reliefs: readonly Drain[];
  /** Tundishes of a vessel: its pipe ends there, or the tundish says it serves it. */
  tundishesOf(vessel: Point): readonly Point[];
}

const plain = (name: string): string => name.trim().toLowerCase();
const same = (a: string, b: string): boolean => a !== '' && b !== '' && (a === b || a.includes(b) || b.includes(a));

function awayFrom(given: Given, a: Point, b: Point): number {
  const [p, q] = [pointFrame(given.plan, a)?.origin, pointFrame(given.plan, b)?.origin];
  return p && q ? distance3(p, q) : Number.POSITIVE_INFINITY;
}

/** The vessel a tundish says it serves: by id, else the nearest of those that are called so. */
function servedBy(given: Given, tundish: Point, byName: ReadonlyMap<string, readonly Point[]>): Point | undefined {
  const serves = tundish.fields.serves;
  if (typeof serves !== 'string' || plain(serves) === '') return undefined;
  const called = [...byName].filter(([name]) => same(name, plain(serves))).flatMap(([, points]) => points);
  const byId = [...byName.values()].flat().find((v) => v.id === serves);
  return byId ?? called.sort((a, b) => awayFrom(given, tundish, a) - awayFrom(given, tundish, b))[0];
}

function sizeOf({ edge }: DrainStep): number | null {
  const found = edge.tube.kind === 'copper' ? tube('copper', edge.tube.size) : undefined;
  const nominal = found ? Number(found.label) : Number.NaN;
  return Number.isFinite(nominal) ? nominal : null;
}

function lengthOf(drain: Drain): Quantity {
  const spans = drain.steps.map((s) => s.edge.lengthMm);
  const lo = spans.reduce((sum, s) => sum + s.lo, 0) / 1000;
  const open = spans.some((s) => s.hi === null);
  const hi = open ? null : spans.reduce((sum, s) => sum + (s.hi ?? 0), 0) / 1000;
  const value = spans.some((s) => s.value === null) ? null : spans.reduce((sum, s) => sum + (s.value ?? 0), 0) / 1000;
  return between(lo, hi, 'm', 1, 'derived', value);
}

function straightDrop(drain: Drain): number | null {
  let sum = 0;
  for (const step of drain.steps) {
    if (step.drop === null) return null;
    if (!isPlumb(step) || step.drop.mm <= 0) break;
    sum += step.drop.lo;
  }
  return sum;
}

const known = new WeakMap<Given, Discharges>();

function work(given: Given): Discharges {
  const { plan, network } = given;
  const standing = Object.values(plan.points).filter((p) => network.alive.has('points', p.id));
  const drains = drainsOf(given, 'discharge');
  const pointOf = (end: Drain['end']): Point | null => (end === null ? null : (plan.points[end.point] ?? null));
  const isRelief = (d: Drain): boolean =>
    kindOf(given, d.source) === 'boiler' || (d.source === null && d.service === 'boilerRelief');
  const isValve = (d: Drain): boolean => VALVES.has(kindOf(given, d.source) ?? '');
  const valvePipes = drains
    .filter((d) => isValve(d) && !isRelief(d))
    .map((d): ValvePipe => ({ ...d, from: pointOf(d.source), to: pointOf(d.end) }));
  const reliefs = drains.filter(isRelief);
  const vessels = standing.filter((p) => VESSELS.has(p.kind) && p.fields.unvented !== false);
  const tundishes = standing.filter((p) => p.kind === 'tundish');
  const byName = new Map<string, Point[]>();
  for (const v of vessels) byName.set(plain(v.name), [...(byName.get(plain(v.name)) ?? []), v]);
  const ofVessel = new Map<string, Point[]>();
  const pair = (vessel: Point, tundish: Point): void => {
    const now = ofVessel.get(vessel.id) ?? [];
    if (!now.includes(tundish)) ofVessel.set(vessel.id, [...now, tundish]);
  };
  for (const { from, to } of valvePipes) if (from && to?.kind === 'tundish') pair(from, to);
  // What is drawn goes before what is said.
  const drawnTo = new Set(valvePipes.flatMap(({ to }) => to?.id ?? []));
  for (const tundish of tundishes.filter((t) => !drawnTo.has(t.id))) {
    const vessel = servedBy(given, tundish, byName);
    if (vessel) pair(vessel, tundish);
  }
  const ofTundish = new Map<string, Point[]>();
  for (const v of vessels)
    for (const t of ofVessel.get(v.id) ?? []) ofTundish.set(t.id, [...(ofTundish.get(t.id) ?? []), v]);
  const boilersInto = new Set(reliefs.flatMap((r) => r.end?.point ?? []));
  const tundishesOf = (vessel: Point): readonly Point[] => ofVessel.get(vessel.id) ?? [];
  const tundishPipes = drains
    .filter((d) => !isRelief(d) && !isValve(d))
    .map((d): TundishPipe => {
      const tundish = pointOf(d.source);
      const serving = tundish === null ? [] : (ofTundish.get(tundish.id) ?? []);
      const byBoiler = tundish !== null && boilersInto.has(tundish.id);
      return {
        ...d,
        tundish,
        vessels: serving,
        boilersOnly: serving.length === 0 && byBoiler,
        lengthM: lengthOf(d),
        bends: bendsAlong(network, d),
        straightDropMm: straightDrop(d),
        sizes: [...new Set(d.steps.map(sizeOf))],
      };
    });
  return { vessels, valvePipes, tundishPipes, reliefs, tundishesOf };
}

/** Safety valves, tundishes and what leads away from them. Worked out once for each plan and case. */
export function discharges(given: Given): Discharges {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}

/** The valve outlet that decides: the greatest of those that were told; null where one was not. */
export function outletOf(vessels: readonly Point[], outlets: readonly string[]): string | null {
  const told = vessels.map((v) => v.fields.valveOutlet);
  if (told.length === 0 || told.some((t) => typeof t !== 'string' || !outlets.includes(t))) return null;
  return outlets.filter((o) => told.includes(o)).pop() ?? null;
}

export const nominalOf = sizeOf;
