import { constant, figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';

const STEPS = ['smallest', 'small', 'middle', 'large'] as const;
const CM2_IN_M2 = 10_000;

/**
 * Free area of ventilation for a duct or void of a cross-section in m2 that holds gas pipe, in cm2. Zero where it is
 * so small that it needs none. `sureness` travels: the steps have not been read on the page.
 */
export function voidVentCm2(sectionM2: number): Quantity {
  const row =
    STEPS.find((step) => {
      const upTo = figure('void-vent', step, 'upTo');
      return upTo.is === 'known' && sectionM2 <= upTo.lo;
    }) ?? 'large';
  const share = figure('void-vent', row, 'share');
  const areaM2 = share.is === 'known' ? share.lo * sectionM2 : constant('void-vent', row, 'area');
  const { sureness } = share.is === 'known' ? share : { sureness: 'memory' as const };
  return exact(areaM2 * CM2_IN_M2, 'cm2', 0, sureness);
}
