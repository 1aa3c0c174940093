import { figure } from '../../reference/figure.ts';
import { type Editions, edition } from '../../reference/tables.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import type { GasKind } from './heat-input.ts';
import { quantityOf } from './said.ts';

export interface PressureLimit {
  /** Stable id an override of the user hangs on. */
  readonly id: string;
  readonly limit: Quantity;
  readonly cite: Cite;
}

/** Loss allowed from meter outlet to appliance inlet, mbar, by the pinned edition; undefined where that edition is not here. */
export function pressureLimit(gas: GasKind, editions: Editions): PressureLimit | undefined {
  const table = edition('gas-pressure-limit', editions);
  const found = table && figure(table, gas);
  if (found?.is !== 'known') return undefined;
  return { id: `gas-drop/${gas}`, limit: quantityOf(found, 2), cite: found.cite };
}
