import type { Point } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { inletMaxC } from '../supply/inlet-limits.ts';
import type { Preheat } from './preheats.ts';
import { celsius, coldOf, heaterSet, STATES, type StateId, type Temperature, temperaturesOf } from './temperatures.ts';
import { type Outlet, type StateTrace, traceState, type WayValve } from './trace-state.ts';

export interface StateFound {
  readonly id: StateId;
  readonly vessel: Temperature;
  readonly trace: StateTrace;
}

/** How the warmest water that can reach the heater stands to what its sheet allows. */
export type Inlet = 'none' | 'pass' | 'stop' | 'cantTell';

export interface Assessed {
  readonly preheat: Preheat;
  readonly cold: Temperature;
  readonly set: Temperature | null;
  readonly states: readonly StateFound[];
  readonly limitC: number | null;
  readonly inlet: Inlet;
  /** What has to be known before the inlet can be judged. */
  readonly missing: readonly string[];
}

const asValve = (p: Point): WayValve =>
  p.kind === 'diverting-valve'
    ? { is: 'diverting', aboveC: celsius(p.fields.sendsAboveC) }
    : { is: 'mixing', setC: celsius(p.fields.setC) };
const asMixing = (p: Point): Outlet => ({ is: 'mixing', setC: celsius(p.fields.setC) });

function pastOutlet({ past }: Preheat): Outlet {
  if (past === null) return { is: 'unseen' };
  if (past.bare.length > 0) return { is: 'bare' };
  return past.valve ? asMixing(past.valve) : { is: 'unseen' };
}

function judgeInlet(preheat: Preheat, high: StateFound, limitC: number | null): Pick<Assessed, 'inlet' | 'missing'> {
  if (preheat.heater === null || high.trace.inletC === null) return { inlet: 'none', missing: [] };
  const { lo, hi } = high.trace.inletC;
  // A limit nobody read is no trouble where the water comes cooler than the least that any of them takes.
  const least = figure('preheat-temperatures', 'inlet, ordinary');
  const bound = limitC ?? (least.is === 'known' ? least.lo : Number.NEGATIVE_INFINITY);
  if (hi <= bound) return { inlet: 'pass', missing: [] };
  const unset = preheat.valves.filter(
    (v) => (v.kind === 'mixing-valve' ? celsius(v.fields.setC) : celsius(v.fields.sendsAboveC)) === null,
  );
  // A setting below what the vessel reaches decides alone; without one, how hot the vessel gets does.
  const capped = preheat.valves.length > unset.length && hi < high.vessel.c;
  const missing = [
    ...(limitC === null ? ['the warmest inlet its sheet allows'] : []),
    ...(unset.length > 0 ? ['what the valve between them is set to'] : []),
    ...(!high.vessel.told && !capped ? ['how hot the vessel can get'] : []),
  ];
  if (limitC !== null && lo > limitC && (high.vessel.told || capped)) return { inlet: 'stop', missing: [] };
  return { inlet: 'cantTell', missing };
}

const known = new WeakMap<Preheat, Assessed>();

/** All four states of a preheat, and how its inlet stands. */
export function assess(given: Given, preheat: Preheat): Assessed {
  const kept = known.get(preheat);
  if (kept) return kept;
  const { vessel, heater } = preheat;
  const cold = coldOf(given);
  const set = heater ? heaterSet(given, heater) : null;
  const temps = temperaturesOf(given, vessel);
  const outlet: Outlet = preheat.outletValve
    ? asMixing(preheat.outletValve)
    : preheat.outlets.length > 0
      ? { is: 'bare' }
      : { is: 'unseen' };
  const states = STATES.map((id): StateFound => {
    const trace = traceState({
      vesselC: temps[id].c,
      coldC: Math.min(cold.c, temps[id].c),
      valves: preheat.valves.map(asValve),
      heaterSetC: set?.c ?? null,
      outlet,
      past: pastOutlet(preheat),
    });
    return { id, vessel: temps[id], trace };
  });
  const limitC = heater ? inletMaxC(given.plan, heater) : null;
  const [high] = states;
  if (!high) throw new Error('four states');
  const found: Assessed = { preheat, cold, set, states, limitC, ...judgeInlet(preheat, high, limitC) };
  known.set(preheat, found);
  return found;
}
