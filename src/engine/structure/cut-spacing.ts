import { exact } from '../../report/quantity.ts';
import { betweenCuts } from './joist-cut.ts';
import type { JoistFault } from './joist-faults.ts';

/** One cut along one joist. */
export interface CutOnJoist {
  readonly as: 'hole' | 'notch';
  readonly alongMm: number;
  readonly lo: number;
  readonly hi: number;
}

const HAIR = 1e-6;

/**
 * Two cuts of one joist against each other: holes by diameters of the larger between centres, a hole and a notch by
 * the timber left along between them. Null where they are far enough apart, or nothing is asked of the pair.
 */
export function spacingFault(
  one: CutOnJoist,
  other: CutOnJoist,
  diameters: number | null,
  holeToNotchMm: number,
): JoistFault | null {
  const centres = Math.abs(one.alongMm - other.alongMm);
  if (one.as === 'hole' && other.as === 'hole') {
    if (diameters === null) return null;
    const [lo, hi] = [diameters * Math.max(one.lo, other.lo), diameters * Math.max(one.hi, other.hi)];
    if (centres >= hi - HAIR) return null;
    const wanted = { lo, hi, value: null, unit: 'mm', digits: 0, sureness: 'practice' as const };
    const outcome = centres < lo - HAIR ? 'stop' : 'check';
    return { kind: 'tooClose', outcome, found: exact(centres, 'mm', 0), wanted, wantedIs: 'atLeast', missing: [] };
  }
  if (one.as === 'notch' && other.as === 'notch') return null;
  const left = betweenCuts(centres, one.lo, other.lo);
  if (left >= holeToNotchMm - HAIR) return null;
  return {
    kind: 'toNotch',
    outcome: 'stop',
    found: exact(Math.max(0, left), 'mm', 0),
    wanted: exact(holeToNotchMm, 'mm', 0, 'page'),
    wantedIs: 'atLeast',
    missing: [],
  };
}
