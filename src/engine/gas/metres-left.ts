import type { Quantity } from '../../report/quantity.ts';
import type { SectionDrop } from './section-drop.ts';

/** Highest loss per metre a section may have, mbar/m; null where it is not bounded. Loss goes with length in both methods. */
export function steepest(section: SectionDrop): number | null {
  const { drop, effectiveLength } = section;
  if (drop.hi === null || effectiveLength.hi === null || effectiveLength.hi <= 0) return null;
  return drop.hi / effectiveLength.hi;
}

/**
 * Effective metres (straight pipe, fittings counted in) that a section can still grow before the highest loss of the whole
 * path meets the limit. 0 where it is past it already; null where nothing bounds the path or the section has no flow.
 */
export function metresLeft(path: Quantity, section: SectionDrop, limitMbar: number): number | null {
  const slope = steepest(section);
  if (path.hi === null || slope === null || slope === 0) return null;
  return Math.max(0, (limitMbar - path.hi) / slope);
}
