import type { Section } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { drawOff, isTap, needOf, scaleOf } from '../water/draw-offs.ts';
import { HEIGHT_KPA } from '../water/height.ts';
import { pressureAt } from '../water/mains-curve.ts';
import { coldTrace, temperatures } from './combi-flow.ts';
import { type HotWay, hotTrace, hotWays } from './hot-ways.ts';
import { mainsOf } from './mains-readings.ts';
import { lossAt, lossParts } from './way-loss.ts';

/** What arrives at one outlet that is open alone. */
export interface Arrival {
  readonly point: Point;
  readonly of: 'cold' | 'hot';
  /** litres a minute it is reckoned at. */
  readonly flow: Quantity;
  /** Left at the outlet, kPa; null where it cannot be told. */
  readonly kpa: Quantity | null;
  readonly need: Quantity | null;
  readonly missing: readonly string[];
}

interface Asked {
  readonly point: Point;
  readonly of: 'cold' | 'hot';
  readonly vertex: string;
  readonly flow: Quantity;
  readonly cold: readonly Section[];
  readonly hot: readonly Section[];
  /** Through an appliance, whose own loss stands on its sheet. */
  readonly through: boolean;
}

function arrive(given: Given, asked: Asked): Arrival {
  const mains = mainsOf(given);
  const need = needOf(asked.point.kind);
  const base = { point: asked.point, of: asked.of, flow: asked.flow, need: need && quantityOf(need) };
  const at = mains.curve && pressureAt(mains.curve, asked.flow.lo);
  if (mains.curve === null || at === null)
    return { ...base, kpa: null, missing: ['the pressure while so much flows: measure it with more running'] };
  const place = given.network.vertices.get(asked.vertex)?.place;
  if (!place || mains.z === null) return { ...base, kpa: null, missing: ['how high it lies above the reading'] };
  const [cold, hot] = [coldTrace(given), hotTrace(given)];
  const { cold: coldC, hot: hotC } = temperatures(given);
  const parts = [
    ...(cold ? [{ of: lossParts(given, cold, asked.cold), tC: coldC.value ?? coldC.lo }] : []),
    ...(hot && asked.hot.length > 0 ? [{ of: lossParts(given, hot, asked.hot), tC: hotC.value ?? hotC.lo }] : []),
  ];
  const losses = parts.map((p) => lossAt(p.of, asked.flow.lo, p.tC));
  const up = (z: number): number => ((z - (mains.z ?? z)) / 1000) * HEIGHT_KPA;
  const most = losses.some((l) => l.hi === null) ? null : losses.reduce((sum, l) => sum + (l.hi ?? 0), 0);
  const least = losses.reduce((sum, l) => sum + l.lo, 0);
  const missing = [...new Set(parts.flatMap((p) => p.of.missing))];
  if (most === null) return { ...base, kpa: null, missing: ['how long a pipe on the way is that nobody can see'] };
  const [lo, hi] = [at - up(place.zHi) - most, at - up(place.zLo) - least];
  const kpa: Quantity = { ...exact(hi, 'kPa', 0), lo: Math.max(0, lo), hi: Math.max(0, hi), value: null };
  return { ...base, kpa, missing: [...missing, ...(asked.through ? ['what the boiler itself takes'] : [])] };
}

function askedOf(way: HotWay, coldTo: (point: string) => readonly Section[]): Asked[] {
  const { heater, flow } = way;
  if (way.isTail || heater?.kind !== 'boiler' || flow === null) return [];
  const cold = coldTo(heater.id);
  if (cold.length === 0) return [];
  return [{ point: way.point, of: 'hot', vertex: way.end.vertex, flow, cold, hot: way.sections, through: true }];
}

function work(given: Given): Arrival[] {
  const trace = coldTrace(given);
  const scale = scaleOf(given.plan.basis.editions);
  if (!trace || scale === undefined || mainsOf(given).curve === null) return [];
  const fromTap = (way: readonly Section[]): readonly Section[] => {
    const first = way[0];
    const source = first && trace.sources.find((s) => s.vertex === first.from);
    return given.plan.points[source?.point ?? '']?.kind === 'stop-tap' && way.every((s) => s.sound) ? way : [];
  };
  const cold = trace.ends.flatMap((end): Asked[] => {
    const point = given.plan.points[end.point];
    if (!point || !isTap(point.kind)) return [];
    const way = fromTap(trace.pathTo(end.vertex));
    const told = point.fields.flowLPerMin;
    const draw = drawOff(point.kind, scale);
    const flow =
      typeof told === 'number' && told > 0
        ? exact(told, 'litres/min', 1, 'page')
        : draw && exact(draw.flow.lo * 60, 'litres/min', 1, draw.flow.sureness);
    if (way.length === 0 || !flow) return [];
    return [{ point, of: 'cold', vertex: end.vertex, flow, cold: way, hot: [], through: false }];
  });
  const coldTo = (point: string): readonly Section[] => {
    const end = trace.ends.find((e) => e.point === point);
    return end ? fromTap(trace.pathTo(end.vertex)) : [];
  };
  const hot = hotWays(given).flatMap((w) => askedOf(w, coldTo));
  return [...cold, ...hot].map((asked) => arrive(given, asked)).sort(byLeft);
}

/** Least left first; what cannot be told last. */
const byLeft = (a: Arrival, b: Arrival): number =>
  (a.kpa?.lo ?? Number.POSITIVE_INFINITY) - (b.kpa?.lo ?? Number.POSITIVE_INFINITY) ||
  (a.point.id < b.point.id ? -1 : a.point.id > b.point.id ? 1 : 0);

const known = new WeakMap<Given, readonly Arrival[]>();

/** What arrives at every outlet drawn back to the stop tap. Empty without a reading of standing, flowing and flow. */
export function arrivals(given: Given): readonly Arrival[] {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}
