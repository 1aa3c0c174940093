import type { Box, Vec } from '../../drawing/display-list.ts';

/** What is drawn of a record in the plane of a view, as far as a finger or a snap is concerned. */
export type Shape =
  | { readonly is: 'spot'; readonly at: Vec }
  | { readonly is: 'line'; readonly a: Vec; readonly b: Vec }
  | { readonly is: 'area'; readonly ring: readonly Vec[]; readonly holes?: readonly (readonly Vec[])[] };

export const apart = (a: Vec, b: Vec): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Place on the line from `a` to `b` nearest to `p`, and how far along it lies, 0 to 1. */
export function nearestOn(a: Vec, b: Vec, p: Vec): { at: Vec; t: number } {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const full = dx * dx + dy * dy;
  const t = full === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / full));
  return { at: [a[0] + dx * t, a[1] + dy * t], t };
}

export function inRing(ring: readonly Vec[], p: Vec): boolean {
  let inside = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  });
  return inside;
}

/** 0 inside an area; else the distance to what is drawn, in mm of the plane. */
export function distanceTo(shape: Shape, p: Vec): number {
  if (shape.is === 'spot') return apart(shape.at, p);
  if (shape.is === 'line') return apart(nearestOn(shape.a, shape.b, p).at, p);
  if (inRing(shape.ring, p) && !(shape.holes ?? []).some((hole) => inRing(hole, p))) return 0;
  const edges = shape.ring.map((a, i) => apart(nearestOn(a, shape.ring[(i + 1) % shape.ring.length] ?? a, p).at, p));
  return Math.min(...edges);
}

export function boxOf(shape: Shape): Box {
  const pts = shape.is === 'spot' ? [shape.at] : shape.is === 'line' ? [shape.a, shape.b] : shape.ring;
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of pts) {
    box.minX = Math.min(box.minX, x);
    box.minY = Math.min(box.minY, y);
    box.maxX = Math.max(box.maxX, x);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}
