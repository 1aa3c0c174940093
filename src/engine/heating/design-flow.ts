import type { Quantity } from '../../report/quantity.ts';
import { waterAt } from '../hydraulics/water.ts';
import { rising } from './spread.ts';

export interface DesignTemps {
  readonly flowC: number;
  readonly returnC: number;
}

/** kJ that a kilogram gives up from flow to return; null where the water has no figures or does not cool. */
export function heatOf({ flowC, returnC }: DesignTemps): number | null {
  const water = waterAt((flowC + returnC) / 2);
  return water === null || flowC <= returnC ? null : water.cpKJPerKgK * (flowC - returnC);
}

/** Flow that carries a heat, kg/s, by the heat capacity of water at the mean temperature. */
export function designFlow(kW: Quantity, temps: DesignTemps): Quantity | null {
  const heat = heatOf(temps);
  return heat === null ? null : rising([kW], 'kg/s', 3, (n) => n / heat);
}

/** Litres a minute of a flow at a temperature. */
export function litresPerMin(flow: Quantity, tC: number): Quantity | null {
  const water = waterAt(tC);
  return water === null ? null : rising([flow], 'litres/min', 1, (n) => (n / water.densityKgM3) * 60_000);
}
