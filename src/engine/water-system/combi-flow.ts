import type { Trace } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { HEIGHT_KPA, KPA_A_BAR } from '../water/height.ts';
import { atRise, HEAT, hotFlow, riseOf } from '../water/hot-flow.ts';
import { lesser, pressureAt } from '../water/mains-curve.ts';
import { mainsOf } from './mains-readings.ts';
import { type LossParts, lossAt, lossParts } from './way-loss.ts';

/** What a combi gives at its hot tail, litres a minute, and what holds it there. */
export interface CombiFlow {
  readonly point: Point;
  readonly isNew: boolean;
  readonly rise: Quantity | null;
  /** Heat output for hot water; null where it is not told. */
  readonly kw: number | null;
  readonly byHeat: Working | null;
  /** What its sheet says, at the rise of this house. */
  readonly bySheet: Quantity | null;
  /** Lesser of heat and sheet: what it can warm. */
  readonly makes: Quantity | null;
  readonly byMains: Quantity | null;
  /** Lesser of what it can warm and what reaches it. */
  readonly gives: Quantity | null;
  readonly notes: readonly string[];
}

const numberOf = (f: Point['fields'][string] | undefined): number | null => (typeof f === 'number' && f > 0 ? f : null);

export const coldTrace = (given: Given): Trace | undefined => given.traces.find((t) => t.circuit === 'cold');

/** Degrees of cold and hot as the basis tells them, else as is usual. */
export function temperatures(given: Given): {
  readonly cold: Quantity;
  readonly hot: Quantity;
  readonly told: boolean;
} {
  const { coldC, hotC } = given.plan.basis;
  const of = (told: number | null | undefined, usual: typeof HEAT.cold): Quantity =>
    typeof told === 'number' ? exact(told, '°C', 0, 'page') : quantityOf(usual);
  return {
    cold: of(coldC, HEAT.cold),
    hot: of(hotC, HEAT.hot),
    told: typeof coldC === 'number' && typeof hotC === 'number',
  };
}

/** The temperature losses are worked out at: cold water as it comes. */
const coldOf = (given: Given): number => {
  const { cold } = temperatures(given);
  return cold.value ?? cold.lo;
};

const STEPS = 40;

/** Greatest flow up to what was measured that leaves `need` kPa after height and pipe: by halving. */
function greatest(
  left: (flow: number) => number | null,
  most: number,
): { readonly flow: number; readonly all: boolean } {
  const enough = (flow: number): boolean => (left(flow) ?? -1) >= 0;
  if (enough(most)) return { flow: most, all: true };
  if (!enough(0)) return { flow: 0, all: false };
  let [lo, hi] = [0, most];
  for (let i = 0; i < STEPS; i++) {
    const middle = (lo + hi) / 2;
    if (enough(middle)) lo = middle;
    else hi = middle;
  }
  return { flow: lo, all: false };
}

function reaching(given: Given, point: Point): { readonly flow: Quantity | null; readonly notes: readonly string[] } {
  const mains = mainsOf(given);
  if (mains.flow === null) return { flow: null, notes: [] };
  const { curve } = mains;
  const most = mains.flow;
  if (curve === null) {
    const notes = [
      'the pressure while it flows is not measured, so the flow at the tap is all that can be said: no more reaches the boiler',
    ];
    return { flow: { lo: 0, hi: most, value: null, unit: 'litres/min', digits: 1, sureness: 'page' }, notes };
  }
  const vertex = given.network.vertices.get(`${point.id}/cold`);
  const z = vertex?.place ? { lo: vertex.place.zLo, hi: vertex.place.zHi } : null;
  const up = (mm: number | undefined): number =>
    mains.z === null || mm === undefined ? 0 : ((mm - mains.z) / 1000) * HEIGHT_KPA;
  const trace = coldTrace(given);
  const sections = trace?.pathTo(`${point.id}/cold`) ?? [];
  const pipe: LossParts = trace ? lossParts(given, trace, sections) : { parts: [], missing: [] };
  const need = (numberOf(point.fields.hotLeastBar) ?? 0) * KPA_A_BAR;
  const tC = coldOf(given);
  const left = (side: 'lo' | 'hi') => (flow: number) => {
    const at = pressureAt(curve, flow);
    const loss = lossAt(pipe, flow, tC)[side];
    return at === null || loss === null ? null : at - up(z?.[side]) - loss - need;
  };
  const [worst, best] = [greatest(left('hi'), most), greatest(left('lo'), most)];
  const notes = [
    ...(mains.z === null || z === null ? ['height between reading and boiler is not known, so none is counted'] : []),
    ...(sections.length === 0 ? ['the cold pipe to it is not drawn, so no loss of pipe is counted'] : []),
    ...(need === 0 ? ['the least pressure at its inlet is not told: any is taken to do'] : []),
    ...pipe.missing.map((m) => `not counted: ${m}`),
  ];
  const flow: Quantity = {
    lo: worst.flow,
    hi: best.all ? null : best.flow,
    value: null,
    unit: 'litres/min',
    digits: 1,
    sureness: 'derived',
  };
  return { flow, notes };
}

function work(given: Given, point: Point): CombiFlow {
  const { cold, hot, told } = temperatures(given);
  const rise = riseOf(cold, hot);
  const kw = numberOf(point.fields.hotOutputKw) ?? numberOf(point.fields.outputKw);
  const byHeat = kw === null || rise === null ? null : hotFlow(exact(kw, 'kW', 1, 'page'), rise);
  const litres = numberOf(point.fields.hotLPerMin);
  const toldRise = numberOf(point.fields.hotRiseK);
  const at = toldRise === null ? quantityOf(HEAT.sheetRise) : exact(toldRise, 'K', 0, 'page');
  const bySheet = litres === null || rise === null ? null : atRise(exact(litres, 'litres/min', 1, 'page'), at, rise);
  const heat = byHeat?.result ?? null;
  const makes = heat && bySheet ? lesser(heat, bySheet) : (heat ?? bySheet);
  const { flow: byMains, notes } = reaching(given, point);
  const gives = makes && byMains ? lesser(makes, byMains) : (makes ?? byMains);
  return {
    point,
    isNew: given.case.when === 'after' && point.option !== null,
    rise,
    kw,
    byHeat,
    bySheet,
    makes,
    byMains,
    gives,
    notes: [...(told ? [] : ['cold and hot water as is usual, until they are told in the basis']), ...notes],
  };
}

const known = new WeakMap<Given, readonly CombiFlow[]>();

export const isCombi = (p: Point): boolean =>
  p.kind === 'boiler' && p.fields.type === 'combi' && p.connections.some((c) => c.service === 'hot');

/** Every standing combi, drawn with pipes or not. Worked out once for each plan and case. */
export function combiFlows(given: Given): readonly CombiFlow[] {
  const found =
    known.get(given) ??
    Object.values(given.plan.points)
      .filter((p) => isCombi(p) && given.network.alive.has('points', p.id))
      .map((p) => work(given, p));
  known.set(given, found);
  return found;
}
