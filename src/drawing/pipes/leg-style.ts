import type { LineStyle } from '../display-list.ts';
import { PEN, serviceLook } from '../look/tokens.ts';

/** New, there and kept, or to be taken out. */
export type PipeState = 'new' | 'there' | 'strip';

/**
 * The line of a pipe. The beat is the service, the weight is its state; hollow is what nobody has seen. New pipe is
 * never hollow. `unbroken` is for stretches that are not known at all.
 */
export function legStyle(service: string, state: PipeState, hollow: boolean, unbroken = false): LineStyle {
  const look = serviceLook(service);
  const base = { ink: `service:${service}`, dash: unbroken ? [] : look.dashMm, fit: true };
  if (hollow && state !== 'new') {
    const strike = state === 'strip' ? { strike: PEN.stripCrossEvery } : {};
    const ends = unbroken ? { ends: PEN.unseenEnds } : {};
    return { ...base, pen: PEN.assumedOuter, core: PEN.assumedCore, ...strike, ...ends };
  }
  if (state === 'strip') return { ...base, pen: look.stripMm, strike: PEN.stripCrossEvery };
  return { ...base, pen: state === 'new' ? look.newMm : look.thereMm };
}
