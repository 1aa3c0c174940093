import { addQuantities, exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, step } from '../gas/said.ts';

/** What the sheet of an appliance says of its flue, m. Null where it was not read. */
export interface FlueSheet {
  readonly maxM: number | null;
  readonly bend90M: number | null;
  readonly bend45M: number | null;
}

export interface FlueShape {
  readonly straightM: Quantity;
  readonly bends90: number;
  readonly bends45: number;
}

const TITLE = 'Length of the flue with its bends';

/**
 * Straight length and bends as metres, by the appliance's own figures. Without the metres of a bend that is there the sum
 * is only known from below, and comes back without a result.
 */
export function flueLength(shape: FlueShape, sheet: FlueSheet): Working {
  const parts = [
    ['bend of 90', shape.bends90, sheet.bend90M],
    ['bend of 45', shape.bends45, sheet.bend45M],
  ] as const;
  const missing = parts.flatMap(([what, n, each]) => (n > 0 && each === null ? [`what a ${what} counts as`] : []));
  const straight = step('Straight', 'as drawn, to the corners', shape.straightM);
  const bends = parts.flatMap(([what, n, each]) =>
    n === 0 || each === null
      ? []
      : [
          step(
            n === 1 ? `1 ${what}` : `${n} ${what}`,
            `${n} x ${each.toFixed(2)} m, by its sheet`,
            exact(n * each, 'm', 2, 'page'),
          ),
        ],
  );
  const steps = [straight, ...bends];
  if (missing.length > 0) return cannot(TITLE, missing, steps);
  const result = addQuantities(steps.flatMap((s) => (s.result ? [s.result] : [])));
  return {
    title: TITLE,
    steps: [...steps, step('Together', '', result)],
    result,
    missing: [],
    assumed: ['every bend counts, the one on the appliance too: its sheet may hold that one in'],
  };
}
