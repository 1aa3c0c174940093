import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';

export type ChaseWay = 'vertical' | 'horizontal';

export interface ChaseLimits {
  readonly depth: Quantity | null;
  /** Null for an upright chase: its length is not limited. */
  readonly length: Quantity | null;
}

/** How deep a chase may be in a single leaf of masonry without its finishes, mm; and how long where it runs level. */
export function chaseLimits(way: ChaseWay, leafMm: number): ChaseLimits {
  const share = figure('wall-chases', way, 'share');
  const most = figure('wall-chases', way, 'mm');
  return {
    depth: share.is === 'known' ? exact(share.lo * leafMm, 'mm', 1, share.sureness) : null,
    length: most.is === 'known' ? exact(most.lo, 'mm', 0, most.sureness) : null,
  };
}

/** Chases on both faces of a wall weaken it together unless they are its thickness apart along it. */
export const backToBack = (apartMm: number, thicknessMm: number): boolean => apartMm < thicknessMm;
