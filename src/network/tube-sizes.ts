import { sayTubeSize, tubeOdMm } from '../catalogue/tubes.ts';
import type { Tube } from '../plan/records/pipework.ts';

/** Outside diameter in mm for comparing sizes; null where nobody read the size. */
export function odMm(tube: Tube): number | null {
  if (tube.size === null) return null;
  const known = tubeOdMm(tube);
  if (known !== undefined) return known;
  // A size of a kind that is not in the catalogue still begins with its diameter, as every size is written.
  const said = Number.parseFloat(tube.size);
  return Number.isFinite(said) ? said : null;
}

/** As it is said at the counter: "22". "unknown size" where nobody read it. */
export const sayTube = (tube: Tube): string => (tube.size === null ? 'unknown size' : sayTubeSize(tube));

/** Largest first; a size nobody read counts as the smallest. */
export const bySize = (a: Tube, b: Tube): number => (odMm(b) ?? 0) - (odMm(a) ?? 0);

/** The larger of two tubes; the first where they are alike. */
export const larger = (a: Tube, b: Tube): Tube => (bySize(a, b) > 0 ? b : a);
