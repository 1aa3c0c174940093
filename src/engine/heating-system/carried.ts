import { addQuantities, exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { HeatLoad } from './loads.ts';

const none: Quantity = exact(0, 'kW', 1);
const sum = (of: readonly Quantity[]): Quantity => (of.length === 0 ? none : addQuantities(of));
const told = (load: HeatLoad): Quantity => load.kW ?? { ...none, hi: null, value: null };

/** No more than the boiler gives, where that bounds it. */
function capped(q: Quantity, most: Quantity | null): Quantity {
  const top = most?.hi ?? null;
  if (top === null || (q.hi !== null && q.hi <= top)) return q;
  const hi = Math.max(q.lo, top);
  return { ...q, hi, value: null, sureness: leastSure(q.sureness, most?.sureness ?? 'page') };
}

/**
 * Heat that goes through one pipe, kW. Loads of one branch of zone valves run together; two branches may run by turns
 * or together. A load nobody told leaves the low side, and the boiler's output then bounds the high one.
 */
export function carried(loads: readonly HeatLoad[] | null, most: Quantity | null): Quantity {
  if (loads === null) return capped({ ...none, hi: null, value: null }, most);
  const zones = new Map<string | null, Quantity[]>();
  for (const load of loads) {
    const zone = zones.get(load.zone);
    if (zone) zone.push(told(load));
    else zones.set(load.zone, [told(load)]);
  }
  const always = sum(zones.get(null) ?? []);
  const branches = [...zones].filter(([zone]) => zone !== null).map(([, of]) => sum(of));
  const together = sum([always, ...branches]);
  if (branches.length < 2) return together.hi === null ? capped(together, most) : together;
  const lo = always.lo + Math.max(...branches.map((b) => b.lo));
  return capped({ ...together, lo, value: null }, most);
}
