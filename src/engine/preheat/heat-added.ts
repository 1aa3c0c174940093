import { waterAt } from '../hydraulics/water.ts';

/** Mean heat capacity between two temperatures, kJ/kgK, by Simpson's rule; null outside what is known of water. */
function meanCp(fromC: number, toC: number): number | null {
  const [a, m, b] = [waterAt(fromC), waterAt((fromC + toC) / 2), waterAt(toC)];
  return a && m && b && (a.cpKJPerKgK + 4 * m.cpKJPerKgK + b.cpKJPerKgK) / 6;
}

/**
 * Heat that a litre (measured as it comes in) takes on between two temperatures, kWh; 0 where it is warm enough already.
 * Null outside what is known of water.
 */
export function kWhPerLitre(fromC: number, toC: number): number | null {
  const [cp, cold] = [meanCp(fromC, toC), waterAt(fromC)];
  if (cp === null || !cold) return null;
  return (Math.max(0, toC - fromC) * cp * cold.densityKgM3) / 1000 / 3600;
}

/** The same as power at a flow, kW. */
export function kwAt(lPerMin: number, fromC: number, toC: number): number | null {
  const perLitre = kWhPerLitre(fromC, toC);
  return perLitre === null ? null : perLitre * lPerMin * 60;
}
