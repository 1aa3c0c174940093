import { type Figure, figure } from '../../reference/figure.ts';
import type { TubeSize } from '../../reference/tubes.ts';

export interface BareLimit {
  /** By outside diameter: the page that was read. */
  readonly byDiameter: Figure;
  /** The same rule as some read it, by bore: from memory, and stricter for some sizes. */
  readonly byBore: Figure | null;
}

const limits = new Map<string, BareLimit>();

/** Longest hot pipe without insulation, m, for a size of tube; both readings. */
export function bareLimit(size: TubeSize): BareLimit {
  const key = `${size.kind}|${size.size}`;
  const known = limits.get(key);
  if (known) return known;
  const found: BareLimit = {
    byDiameter: figure('hot-bare', size.odMm, 'metres'),
    byBore: size.boreMm === null ? null : figure('hot-bare-bore', size.boreMm, 'metres'),
  };
  limits.set(key, found);
  return found;
}
