import { exact } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, step } from '../gas/said.ts';
import { blendC } from '../preheat/blend.ts';
import { MIXING_CITE, mixing } from './mixing.ts';

/** Any one unit of amount or flow; null for what is not told. Degrees. */
export interface BlendAsk {
  readonly hotC: number;
  readonly coldC: number;
  readonly hot: number | null;
  readonly cold: number | null;
  readonly wantC: number | null;
  readonly want: number | null;
}

const UNIT = 'litres';
const title = 'Hot and cold mixed';

function blend(hotC: number, coldC: number, hot: number, cold: number): Working {
  if (!(hot >= 0 && cold >= 0 && hot + cold > 0)) return cannot(title, ['how much of each']);
  const share = hot / (hot + cold);
  const result = exact(blendC(share, hotC, coldC), '°C', 1);
  const how = `(${hot} x ${hotC} + ${cold} x ${coldC}) / (${hot} + ${cold})`;
  return {
    title,
    steps: [
      step('Share of hot', `${hot} / (${hot} + ${cold})`, exact(share, '', 3)),
      step('Blend', how, result, [MIXING_CITE]),
    ],
    result,
    missing: [],
    assumed: ['a litre of hot weighs what a litre of cold does'],
  };
}

function wanted(hotC: number, coldC: number, mixedC: number, amount: number | null): Working {
  const working = mixing({ hotC, coldC, mixedC, mixed: amount === null ? null : { amount, unit: UNIT } });
  if (working.result === null || amount === null) return working;
  const hot = working.result.lo;
  const cold = step('Cold', `${amount} less the hot`, exact(amount - hot, UNIT, 1));
  return { ...working, steps: [...working.steps, cold] };
}

/**
 * Two of water into one: its temperature from how much there is of each, or how much of each a blend that is wanted
 * takes. Where both are told the blend wanted is the answer, and what the two would make stands before it.
 */
export function blendSum({ hotC, coldC, hot, cold, wantC, want }: BlendAsk): Working {
  const made = hot === null || cold === null ? null : blend(hotC, coldC, hot, cold);
  if (wantC === null) return made ?? cannot(title, ['how much of hot and of cold, or the blend that is wanted']);
  const shares = wanted(hotC, coldC, wantC, want);
  return { ...shares, steps: [...(made?.steps ?? []), ...shares.steps] };
}
