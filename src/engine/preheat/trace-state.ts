import { kWhPerLitre } from './heat-added.ts';

export interface Between {
  readonly lo: number;
  readonly hi: number;
}

/** A valve on the way from the vessel to the heater, in the order the water meets them. Null: not told. */
export type WayValve =
  | { readonly is: 'mixing'; readonly setC: number | null }
  | { readonly is: 'diverting'; readonly aboveC: number | null };

/** What stands between the heater, or the way past it, and the outlets. `unseen`: not drawn, so nothing is counted on. */
export type Outlet =
  | { readonly is: 'mixing'; readonly setC: number | null }
  | { readonly is: 'bare' }
  | { readonly is: 'unseen' };

export interface StateAsk {
  readonly vesselC: number;
  readonly coldC: number;
  readonly valves: readonly WayValve[];
  /** What the heater heats to; null where there is none: then the water goes on as it comes. */
  readonly heaterSetC: number | null;
  readonly outlet: Outlet;
  readonly past: Outlet;
}

/** Water through the whole of it in one state of the vessel. Temperatures in degrees. */
export interface StateTrace {
  readonly goes: 'through' | 'past' | 'either';
  /** What comes to the heater; null where all of it goes past. */
  readonly inletC: Between | null;
  /** Heat the heater adds to a litre, kWh. */
  readonly addedKWhPerL: Between | null;
  /** At the hot port of an outlet. */
  readonly outletC: Between;
}

/** A valve that is set passes what is cooler than its setting as it is; of one nobody read only the bounds are true. */
function mixed(t: Between, setC: number | null, coldC: number): Between {
  if (setC === null) return { lo: Math.min(t.lo, coldC), hi: t.hi };
  return { lo: Math.min(t.lo, setC), hi: Math.min(t.hi, setC) };
}

const throughOutlet = (t: Between, outlet: Outlet, coldC: number): Between =>
  outlet.is === 'mixing' ? mixed(t, outlet.setC, coldC) : t;

const span = (all: readonly Between[]): Between => ({
  lo: Math.min(...all.map((b) => b.lo)),
  hi: Math.max(...all.map((b) => b.hi)),
});

/** Pure: no water leaves it hotter than the hottest that went in or than the heater is set to. */
export function traceState(ask: StateAsk): StateTrace {
  const { coldC, heaterSetC } = ask;
  let t: Between = { lo: ask.vesselC, hi: ask.vesselC };
  let through = true;
  const gonePast: Between[] = [];
  for (const valve of ask.valves) {
    if (!through) break;
    if (valve.is === 'mixing') t = mixed(t, valve.setC, coldC);
    else {
      const above = valve.aboveC;
      if (above === null || t.hi > above) gonePast.push(above === null ? t : { lo: Math.max(t.lo, above), hi: t.hi });
      if (above !== null && t.lo > above) through = false;
      else if (above !== null) t = { lo: t.lo, hi: Math.min(t.hi, above) };
    }
  }
  const inlet = through ? t : null;
  const heated =
    inlet && (heaterSetC === null ? inlet : { lo: Math.max(inlet.lo, heaterSetC), hi: Math.max(inlet.hi, heaterSetC) });
  const ends = gonePast.map((p) => throughOutlet(p, ask.past, coldC));
  if (heated) ends.push(throughOutlet(heated, ask.outlet, coldC));
  const [least, most] =
    inlet && heaterSetC !== null
      ? [
          kWhPerLitre(Math.min(inlet.hi, heaterSetC), heaterSetC),
          kWhPerLitre(Math.min(inlet.lo, heaterSetC), heaterSetC),
        ]
      : [null, null];
  return {
    goes: !through ? 'past' : gonePast.length > 0 ? 'either' : 'through',
    inletC: inlet,
    addedKWhPerL: least !== null && most !== null ? { lo: least, hi: most } : null,
    outletC: span(ends),
  };
}
