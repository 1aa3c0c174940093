import type { Outline } from '../../geometry/outlines.ts';
import type { Xy } from '../../plan/records/parts.ts';

type Axis = 'x' | 'y';

/** What of an outline lies on one side of a line along an axis; empty where nothing does. */
function half(outline: Outline, axis: Axis, at: number, keep: 'above' | 'below'): Xy[] {
  const way = keep === 'above' ? 1 : -1;
  const inside = (p: Xy): boolean => (p[axis] - at) * way >= 0;
  return outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p;
    const kept = inside(p) ? [p] : [];
    if (inside(p) === inside(q)) return kept;
    const t = (at - p[axis]) / (q[axis] - p[axis]);
    return [...kept, { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t }];
  });
}

export interface Window {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** What of an outline lies in an upright rectangle; fewer than three corners where nothing does. */
export function clipTo(outline: Outline, w: Window): Xy[] {
  const x = half(half(outline, 'x', w.minX, 'above'), 'x', w.maxX, 'below');
  return half(half(x, 'y', w.minY, 'above'), 'y', w.maxY, 'below');
}
