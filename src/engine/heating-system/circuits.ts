import type { Section } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { type Balance, balance } from '../heating/balance.ts';
import { partLoss } from '../heating/section-loss.ts';
import { middle, rising, total } from '../heating/spread.ts';
import { waterAt } from '../hydraulics/water.ts';
import { sayPoint } from '../say-names.ts';
import { boilerOutput } from './boiler-bound.ts';
import { carried } from './carried.ts';
import type { HeatLoad } from './loads.ts';
import { type HeatingSystem, type HeatSection, heatingOf } from './solve-heating.ts';

/** From the boiler to one load and back. */
export interface HeatWay {
  readonly load: HeatLoad;
  readonly sections: readonly HeatSection[];
  /** kPa of the drawn pipes with what stands in them. */
  readonly pipes: Quantity;
  /** kPa of the load itself and of what lies behind it; null where not told. */
  readonly own: Quantity | null;
  /** kPa of that which its open lockshield loses, best figure. */
  readonly openKPa: number;
  /** Its return is drawn as far as the boiler. */
  readonly closed: boolean;
}

export interface HeatCircuit {
  readonly boiler: Point;
  readonly name: string;
  readonly loads: readonly HeatLoad[];
  readonly output: Quantity | null;
  readonly kW: Quantity;
  readonly ways: readonly HeatWay[];
  /** The way that loses most; null where nothing is joined yet. */
  readonly index: HeatWay | null;
  /** kPa of the index way: its pipes, and its load where that is told. */
  readonly lost: Quantity | null;
  /** kPa the boiler's own pump leaves at the design flow, else those drawn on the index way; null where neither is told. */
  readonly head: number | null;
  readonly balance: Balance | null;
  /** Pipes of it, each once, flow before return. */
  readonly sections: readonly HeatSection[];
  /** Some pipe of it is new. */
  readonly isNew: boolean;
}

const KPA = ['kPa', 1] as const;
/** Loss of a pipe whose size, or whose flow, nobody told. */
export const NOT_KNOWN: Quantity = { lo: 0, hi: null, value: null, unit: 'kPa', digits: 1, sureness: 'derived' };

interface Own {
  readonly loss: Quantity;
  /** kPa of it that an open lockshield loses, best figure. */
  readonly openKPa: number;
}

/** A radiator with its two valves, by what is usual: velocity heads of the panel in its tails, and flow factors. */
function radiatorLoss(last: HeatSection | undefined, point: Point | undefined, tC: number): Own | null {
  const velocity = last?.result?.velocity;
  const density = waterAt(tC)?.densityKgM3;
  const heads = figure('heating-parts', 'radiator', 'heads');
  if (!last || !velocity || density === undefined || heads.is !== 'known') return null;
  const panel = rising([velocity, quantityOf(heads)], ...KPA, (v, k) => (k * density * v * v) / 2000);
  const valve = (key: string): Quantity[] => {
    const kv = figure('heating-parts', key, 'kv');
    return kv.is === 'known' ? [partLoss(last.flow, quantityOf(kv), tC)] : [];
  };
  const hand = point?.fields.thermostaticValve === false ? 'lockshield' : 'thermostatic';
  // A lockshield that is drawn is among the parts of the pipe.
  const own = last.inLine.kvs.length > 0 ? [] : valve('lockshield');
  return {
    loss: total([panel, ...valve(hand), ...own], ...KPA),
    openKPa: own.reduce((sum, q) => sum + middle(q), 0),
  };
}

/** Null where not told, and for a radiator of unknown heat: all of the boiler through one valve is no bound. */
function ownLoss(given: Given, system: HeatingSystem, load: HeatLoad, last: HeatSection | undefined): Own | null {
  const point = given.plan.points[load.point];
  const told = point?.fields.lossKPa ?? point?.fields.coilKPa;
  if (typeof told === 'number') return { loss: exact(told, ...KPA, 'page'), openKPa: 0 };
  if (load.kind !== 'radiator' || load.kW === null) return null;
  return radiatorLoss(last, point, system.temps.flowC);
}

/** Where the water comes back to a boiler: its connection, and the pipe at it. */
interface Home {
  readonly end: string | undefined;
  readonly last: readonly Section[];
}

function homeOf(system: HeatingSystem, boiler: string): Home {
  const end = system.back?.ends.find((e) => e.point === boiler)?.vertex;
  return { end, last: system.back?.sections.filter((s) => s.gathers && s.parent === null && s.to === end) ?? [] };
}

function wayOf(given: Given, system: HeatingSystem, load: HeatLoad, { end, last }: Home): HeatWay {
  const found = (ids: readonly string[]): HeatSection[] => ids.flatMap((id) => system.sections.get(id) ?? []);
  const there = found(load.via.flatMap((v) => system.flow?.pathTo(v).map((s) => s.id) ?? []));
  const from = load.back;
  const straight = from === null ? [] : (system.back?.pathTo(from) ?? []);
  // A return with one source is told from it, so the way from its root is the way to the boiler.
  const toBoiler =
    straight.length > 0 || from === null || end === undefined ? straight : (system.back?.pathTo(end) ?? []);
  // Whichever way its return comes, the last of it is the one pipe at the boiler.
  const back = toBoiler.length > 0 ? toBoiler : last;
  const sections = [...there, ...found(back.map((s) => s.id))];
  const losses = sections.map((s) => s.result?.loss ?? NOT_KNOWN);
  const closed = toBoiler[toBoiler.length - 1]?.to === end && end !== undefined;
  const own = ownLoss(given, system, load, there[there.length - 1]);
  return {
    load,
    sections,
    pipes: total(losses, ...KPA),
    own: own?.loss ?? null,
    openKPa: own?.openKPa ?? 0,
    closed,
  };
}

const topless = (q: Quantity): Quantity => ({ ...q, hi: null, value: null });

/**
 * kPa of a way with its load, where told; only a low side where part of the way back is not drawn, or its radiator is
 * of unknown heat. What lies behind tails is never in it.
 */
export function lossOf(w: HeatWay, pipes: Quantity = w.pipes): Quantity {
  const all = w.own === null ? pipes : total([pipes, w.own], ...KPA);
  return w.closed && !(w.own === null && w.load.kind === 'radiator') ? all : topless(all);
}

/** A loss of the index way: without a top where another way may yet lose more than anyone can tell. */
export const lossOfIndex = (ways: readonly HeatWay[], lost: Quantity): Quantity =>
  ways.some((w) => lossOf(w).hi === null) ? topless(lost) : lost;

function pumpsOn(way: HeatWay | null): number | null {
  const head = (way?.sections ?? []).reduce((sum, s) => sum + s.inLine.pumpKPa, 0);
  return head > 0 ? head : null;
}

function circuitOf(given: Given, system: HeatingSystem, vertex: string, boiler: Point): HeatCircuit {
  const loads = system.loads.from(vertex);
  const home = homeOf(system, boiler.id);
  const ways = loads.map((l) => wayOf(given, system, l, home));
  const index = ways.reduce<HeatWay | null>(
    (most, w) => (most && middle(lossOf(most)) >= middle(lossOf(w)) ? most : w),
    null,
  );
  const head = boiler.fields.pumpHeadLeftKPa;
  const even = ways.length > 1 && ways.every((w) => w.own !== null && w.load.kW !== null && lossOf(w).hi !== null);
  const flowOf = (w: HeatWay): number =>
    middle(w.sections.findLast((s) => s.section.service === 'heatingFlow')?.flow ?? w.pipes);
  const asked = even
    ? ways.map((w) => ({ id: w.load.id, lossKPa: middle(lossOf(w)), flowKgPerS: flowOf(w), openKPa: w.openKPa }))
    : [];
  const sections = [...new Set(ways.flatMap((w) => w.sections))].sort(
    (a, b) => Number(a.section.service === 'heatingReturn') - Number(b.section.service === 'heatingReturn'),
  );
  return {
    boiler,
    sections,
    isNew: sections.some((s) => !s.kept),
    name: sayPoint(given.plan, boiler.id),
    loads,
    output: boilerOutput(given, boiler),
    kW: carried(loads, system.bound),
    ways,
    index,
    lost: index && lossOfIndex(ways, lossOf(index)),
    head: typeof head === 'number' ? head : pumpsOn(index),
    balance: balance(asked, (system.temps.flowC + system.temps.returnC) / 2),
  };
}

const known = new WeakMap<Given, readonly HeatCircuit[]>();

/** One circuit for each boiler whose flow is drawn, in the order of ids. */
export function circuitsOfHeating(given: Given): readonly HeatCircuit[] {
  const found = known.get(given);
  if (found) return found;
  const system = heatingOf(given);
  const made = (system.flow?.sources ?? []).flatMap((s) => {
    const point = given.plan.points[s.point];
    return point?.kind === 'boiler' ? [circuitOf(given, system, s.vertex, point)] : [];
  });
  known.set(given, made);
  return made;
}
