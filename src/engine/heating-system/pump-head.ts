import type { Quantity } from '../../report/quantity.ts';
import type { State } from '../../report/section.ts';

/**
 * How a loss stands to the head a pump leaves, both kPa. Over it asks for a check and is no stop: the pump still runs,
 * with less water. Partly over, or with a part of the way not known, it is only noted.
 */
export function headState(lost: Quantity | null, headKPa: number | null): State {
  if (lost === null) return 'none';
  if (headKPa === null) return 'cantTell';
  if (lost.lo > headKPa) return 'check';
  return lost.hi !== null && lost.hi <= headKPa ? 'pass' : 'note';
}
