import type { Tube } from '../plan/records/pipework.ts';
import { tube as tubeSize } from '../reference/tubes.ts';

/** Outside diameter for comparing sizes; null where nobody read the size. */
export function odMm(tube: Tube): number | null {
  if (tube.size === null) return null;
  const known = tubeSize(tube.kind, tube.size)?.odMm;
  if (known !== undefined) return known;
  const said = Number.parseFloat(tube.size);
  return Number.isFinite(said) ? said : null;
}

/** As it is said at the counter: "22". "unknown size" where nobody read it. */
export function sayTube(tube: Tube): string {
  if (tube.size === null) return 'unknown size';
  return tubeSize(tube.kind, tube.size)?.label ?? tube.size.split('x')[0] ?? tube.size;
}

/** Largest first; a size nobody read counts as the smallest. */
export const bySize = (a: Tube, b: Tube): number => (odMm(b) ?? 0) - (odMm(a) ?? 0);

/** The smaller of two tubes; the first where they are alike. */
export const smaller = (a: Tube, b: Tube): Tube => (bySize(a, b) < 0 ? b : a);
