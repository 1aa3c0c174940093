import { type Figure, figure } from '../../reference/figure.ts';
import type { Table } from '../../reference/schema/table-schema.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';

/** Where along a joist something may be cut, from either bearing to the cut's middle, and how large. Null: not read. */
export interface CutLimits {
  readonly fromMm: number | null;
  readonly toMm: number | null;
  /** Depth of a notch, width of a hole. */
  readonly mostMm: Quantity | null;
  /** Least centre to centre, in diameters of the larger hole. */
  readonly diameters: number | null;
  readonly cites: readonly Cite[];
  readonly unverified: boolean;
}

export type Cut = 'notch' | 'hole';

const leastOf = (f: Figure): number | null => (f.is === 'known' ? f.lo : null);

/**
 * What one edition allows of a cut in a solid timber joist of a clear span and depth in mm: shares of span and depth,
 * and the cap in mm. A span or depth that is not known, and a cell nobody has read, leave the figure null.
 */
export function cutLimits(table: Table, cut: Cut, spanMm: number | null, depthMm: number | null): CutLimits {
  const read = (column: string): Figure => figure(table, cut, column);
  const [from, to, share, most, apart] = [read('from'), read('to'), read('depth'), read('most'), read('apart')];
  const along = (f: Figure): number | null => (f.is === 'known' && spanMm !== null ? f.lo * spanMm : null);
  const known = [from, to, share, most].flatMap((f) => (f.is === 'known' ? [f] : []));
  const sureness = leastSure('page', ...known.map((f) => f.sureness));
  const deep = share.is === 'known' && depthMm !== null ? share.lo * depthMm : null;
  const cap = leastOf(most);
  return {
    fromMm: along(from),
    toMm: along(to),
    mostMm: deep === null ? null : exact(cap === null ? deep : Math.min(deep, cap), 'mm', 1, sureness),
    diameters: leastOf(apart),
    cites: [from.cite],
    unverified: sureness === 'memory',
  };
}

/** Is the middle of a cut where it may be? Null where the band is not known. On its edge counts as inside. */
export function inBand(limits: CutLimits, toNearEndMm: number): boolean | null {
  if (limits.fromMm === null || limits.toMm === null) return null;
  const hair = 1e-6;
  return toNearEndMm >= limits.fromMm - hair && toNearEndMm <= limits.toMm + hair;
}

/** Both bands of a span, measured from one of its ends: the second is the first seen from the other end. */
export function bandsFromOneEnd(limits: CutLimits, spanMm: number): readonly (readonly [number, number])[] {
  if (limits.fromMm === null || limits.toMm === null) return [];
  return [
    [limits.fromMm, limits.toMm],
    [spanMm - limits.toMm, spanMm - limits.fromMm],
  ];
}
