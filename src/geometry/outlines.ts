import type { Xy } from '../plan/records/parts.ts';
import { cross, sub } from './vec.ts';

/** A closed line of corners; the last joins the first. */
export type Outline = readonly Xy[];

const edges = (outline: Outline): [Xy, Xy][] => outline.map((p, i) => [p, outline[(i + 1) % outline.length] ?? p]);

/** Twice the signed area halved: above zero anticlockwise, mm2. */
export function signedArea(outline: Outline): number {
  return edges(outline).reduce((sum, [p, q]) => sum + cross(p, q), 0) / 2;
}

export const perimeter = (outline: Outline): number =>
  edges(outline).reduce((sum, [p, q]) => sum + Math.hypot(q.x - p.x, q.y - p.y), 0);

/** Even-odd; on an edge it may be either. */
export function insideOutline(p: Xy, outline: Outline): boolean {
  let inside = false;
  for (const [a, b] of edges(outline)) {
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
}

export const insideArea = (p: Xy, outline: Outline, holes: readonly Outline[]): boolean =>
  insideOutline(p, outline) && !holes.some((h) => insideOutline(p, h));

/** Distance from a place to the nearest edge. */
export function toEdge(p: Xy, outline: Outline): number {
  const far = edges(outline).map(([a, b]) => {
    const d = sub(b, a);
    const l2 = d.x * d.x + d.y * d.y;
    const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * d.x + (p.y - a.y) * d.y) / l2));
    return Math.hypot(p.x - a.x - t * d.x, p.y - a.y - t * d.y);
  });
  return Math.min(...far);
}

/** A part of a line, 0 at its start and 1 at its end. */
export type Part = readonly [from: number, to: number];

/** Where a line from a to b passes an edge of the outline, as parts of the line. */
function passes(a: Xy, b: Xy, outline: Outline): number[] {
  const d = sub(b, a);
  return edges(outline).flatMap(([p, q]) => {
    const e = sub(q, p);
    const det = cross(d, e);
    if (det === 0) return [];
    const t = cross(sub(p, a), e) / det;
    const u = cross(sub(p, a), d) / det;
    return t > 0 && t < 1 && u >= 0 && u <= 1 ? [t] : [];
  });
}

/** The parts of a line that lie in an area less its holes, in order. A line of no length is inside or not. */
export function clipToArea(a: Xy, b: Xy, outline: Outline, holes: readonly Outline[]): Part[] {
  const at = [0, ...[outline, ...holes].flatMap((o) => passes(a, b, o)).sort((p, q) => p - q), 1];
  const found: [number, number][] = [];
  for (const [i, from] of at.entries()) {
    const to = at[i + 1];
    if (to === undefined || to <= from) continue;
    const t = (from + to) / 2;
    if (!insideArea({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }, outline, holes)) continue;
    const last = found[found.length - 1];
    if (last && last[1] === from) last[1] = to;
    else found.push([from, to]);
  }
  return found;
}

/** What two parts of one line share; undefined where nothing. */
export function shared(p: Part, q: Part): Part | undefined {
  const [from, to] = [Math.max(p[0], q[0]), Math.min(p[1], q[1])];
  return from <= to ? [from, to] : undefined;
}

/** The part of a line on which a coordinate that goes evenly from `a` to `b` lies between `lo` and `hi`. */
export function between(a: number, b: number, lo: number, hi: number): Part | undefined {
  if (a === b) return a >= lo && a <= hi ? [0, 1] : undefined;
  const [p, q] = [(lo - a) / (b - a), (hi - a) / (b - a)];
  return shared([0, 1], [Math.min(p, q), Math.max(p, q)]);
}
