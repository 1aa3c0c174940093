import { leastSure, type Quantity } from '../../report/quantity.ts';

/** Two readings at one tap: pressure with nothing running, and with a measured flow running. */
export interface MainsReadings {
  readonly standingKpa: number;
  readonly flowingKpa: number;
  /** litres a minute at the pressure above. */
  readonly flow: number;
}

export const isCurve = (r: MainsReadings): boolean => r.flow > 0 && r.flowingKpa >= 0 && r.standingKpa > r.flowingKpa;

/**
 * Pressure (kPa) at a flow (litres a minute), between the two readings: what is lost grows with the square of the flow.
 * Null above the flow that was measured, and where the readings make no sense.
 */
export function pressureAt(r: MainsReadings, flow: number): number | null {
  if (!isCurve(r) || !(flow >= 0) || flow > r.flow) return null;
  return r.standingKpa - (r.standingKpa - r.flowingKpa) * (flow / r.flow) ** 2;
}

/** Flow (litres a minute) with so much pressure (kPa) left; `atLeast` where that lies above what was measured. */
export function flowAt(r: MainsReadings, kpa: number): { readonly flow: number; readonly atLeast: boolean } | null {
  if (!isCurve(r)) return null;
  if (kpa <= r.flowingKpa) return { flow: r.flow, atLeast: true };
  if (kpa >= r.standingKpa) return { flow: 0, atLeast: false };
  const part = (r.standingKpa - kpa) / (r.standingKpa - r.flowingKpa);
  return { flow: r.flow * Math.sqrt(part), atLeast: false };
}

/** The lesser of two flows, each with its doubt. */
export function lesser(a: Quantity, b: Quantity): Quantity {
  const least = (x: number | null, y: number | null): number | null =>
    x === null ? y : y === null ? x : Math.min(x, y);
  return {
    ...a,
    lo: Math.min(a.lo, b.lo),
    hi: least(a.hi, b.hi),
    value: a.value === null || b.value === null ? null : Math.min(a.value, b.value),
    sureness: leastSure(a.sureness, b.sureness),
  };
}
