import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, figures, step } from '../gas/said.ts';

export const MIXING_CITE = { source: 'hot-water-mixing-page', clause: 'balance of heat' };

export interface MixAsk {
  readonly hotC: number;
  readonly coldC: number;
  readonly mixedC: number;
  /** Mixed water in any one unit of amount or flow; null for the share alone. */
  readonly mixed: { readonly amount: number; readonly unit: string } | null;
}

/**
 * Hot water in a blend: its share, or its amount where the blend's is told. Null where no blend of the two has that
 * temperature.
 */
export function mixing({ hotC, coldC, mixedC, mixed }: MixAsk): Working {
  const title = 'Hot water in a blend';
  if (!(hotC > coldC)) return cannot(title, ['hot water that is warmer than the cold']);
  if (!(mixedC >= coldC && mixedC <= hotC)) return cannot(title, ['a blend between the cold and the hot']);
  const share = exact((mixedC - coldC) / (hotC - coldC), '', 3);
  const how = `(${mixedC} - ${coldC}) / (${hotC} - ${coldC})`;
  const steps = [step('Share of hot', how, share, [MIXING_CITE])];
  if (mixed === null) return { title, steps, result: share, missing: [], assumed: [] };
  if (!(mixed.amount >= 0)) return cannot(title, ['how much is mixed'], steps);
  const hot: Quantity = exact(mixed.amount * share.lo, mixed.unit, 1);
  return {
    title,
    steps: [...steps, step('Hot', `${mixed.amount} ${mixed.unit} x ${figures(share)}`, hot)],
    result: hot,
    missing: [],
    assumed: ['a litre of hot weighs what a litre of cold does'],
  };
}
