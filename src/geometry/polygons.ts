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

/** Union of polygons; nothing of nothing. */
export function union(polygons: readonly Polygon[]): MultiPolygon {
  const [first, ...rest] = polygons.filter((p) => (p[0]?.length ?? 0) > 2);
  return first ? join(first, ...rest) : [];
}

/** What is left of a polygon without the others. */
export function difference(from: Polygon, others: readonly Polygon[]): MultiPolygon {
  if ((from[0]?.length ?? 0) < 3) return [];
  return others.length === 0 ? union([from]) : cut(from, ...others);
}
