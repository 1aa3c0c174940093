import { constant, figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import { waterAt } from '../hydraulics/water.ts';

/**
 * How much water grows from one temperature to another, percent of what it was when cold: density cold over density hot,
 * less one. Null where the properties of water do not reach.
 */
export function growthPercent(fromC: number, toC: number): Quantity | null {
  const [cold, hot] = [waterAt(fromC), waterAt(toC)];
  return cold && hot && exact((cold.densityKgM3 / hot.densityKgM3 - 1) * 100, '%', 2);
}

/** The usual span it is counted over. */
export const usualGrowth = () => {
  const [fromC, toC] = [
    constant('unvented-inlet', 'expansion from', 'C'),
    constant('unvented-inlet', 'expansion to', 'C'),
  ];
  return { fromC, toC, percent: growthPercent(fromC, toC) };
};

/** Litres that a content pushes back as it warms up. */
export function growthLitres(litres: number, fromC: number, toC: number): Quantity | null {
  const percent = growthPercent(fromC, toC);
  return percent && exact((litres * percent.lo) / 100, 'litres', 1);
}

export const usualReducer = () => figure('unvented-inlet', 'reducer', 'bar');
