import * as clipping from 'polygon-clipping';
import type { Xy } from '../plan/records/parts.ts';
import type { Outline } from './outlines.ts';

/** Outer ring first, then its holes; rings are closed by their first corner. */
export type Polygon = [number, number][][];
export type MultiPolygon = Polygon[];

// The package says in its types that it has named exports, and has only a default one.
const { union: join, difference: cut } = (clipping as unknown as { readonly default: typeof clipping }).default;

/** Corners on a grid of a thousandth of a millimetre: hairs of rounding are what breaks clipping. */
const GRID = 1000;
const snap = (n: number): number => Math.round(n * GRID) / GRID + 0;

export const polygonOf = (outline: Outline): Polygon => [outline.map((p): [number, number] => [snap(p.x), snap(p.y)])];

/** Corners without the closing one. */
export const outlineOf = (ring: readonly (readonly [number, number])[]): Xy[] =>
  ring.slice(0, -1).map(([x, y]) => ({ x, y }));

/** Coarser and coarser grids, mm, for outlines so thin or so far out that clipping loses a corner of them. */
const COARSER_MM = [0.1, 1, 10];

const coarse = (polygon: Polygon, mm: number): Polygon =>
  polygon.map((ring) =>
    ring.map(([x, y]): [number, number] => [Math.round(x / mm) * mm + 0, Math.round(y / mm) * mm + 0]),
  );

/** Does the work on the corners as they are, else on coarser ones; where nothing helps, `left` stands as it was. */
function tolerant(work: (on: (p: Polygon) => Polygon) => MultiPolygon, left: MultiPolygon): MultiPolygon {
  for (const mm of [null, ...COARSER_MM]) {
    try {
      return work((p) => (mm === null ? p : coarse(p, mm)));
    } catch (error) {
      // The package throws plain errors on what it cannot put together.
      if (!(error instanceof Error)) throw error;
    }
  }
  return left;
}

/** Union of polygons; nothing of nothing. */
export function union(polygons: readonly Polygon[]): MultiPolygon {
  const solid = polygons.filter((p) => (p[0]?.length ?? 0) > 2);
  const [first, ...rest] = solid;
  return first ? tolerant((on) => join(on(first), ...rest.map(on)), solid) : [];
}

/** What is left of a polygon without the others. */
export function difference(from: Polygon, others: readonly Polygon[]): MultiPolygon {
  if ((from[0]?.length ?? 0) < 3) return [];
  return others.length === 0 ? union([from]) : tolerant((on) => cut(on(from), ...others.map(on)), [from]);
}
