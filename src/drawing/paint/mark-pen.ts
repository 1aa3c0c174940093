import type { MarkItem, Vec } from '../display-list.ts';
import type { Look } from '../look/style-of.ts';
import { type Frame, place } from './frame.ts';
import { CLOSE, move, type Prim, type Seg, type Stroke, to } from './prim.ts';

/** Draws a mark in its own paper mm: x along its turn, y to the left of that, (0, 0) at its place. */
export interface MarkPen {
  readonly look: Look;
  readonly ink: string;
  readonly at: Vec;
  /** Painted units of one paper mm. */
  readonly unit: number;
  pt(x: number, y: number): Vec;
  stroke(ink: string, mm: number, dash?: readonly number[]): Stroke;
  path(pts: readonly Vec[], how: { closed?: boolean; stroke?: Stroke; fill?: string }): Prim;
  circle(x: number, y: number, r: number, how: { stroke?: Stroke; fill?: string }): Prim;
}

export function markPen(item: MarkItem, frame: Frame, look: Look): MarkPen {
  const at = place(frame, item.at, item.spread, item.offsetMm);
  const unit = frame.perPaperMm;
  const a = ((item.turnDeg - frame.turnDeg) * Math.PI) / 180;
  const c = Math.cos(a);
  const s = Math.sin(a);
  const pt = (x: number, y: number): Vec => [at[0] + (x * c - y * s) * unit, at[1] - (x * s + y * c) * unit];
  return {
    look,
    ink: look.ink(item.ink),
    at,
    unit,
    pt,
    stroke: (ink, mm, dash) => ({
      ink,
      width: Math.max(frame.leastPen, mm * unit),
      cap: 'butt',
      join: 'miter',
      ...(dash ? { dash: dash.map((d) => d * unit), dashAt: 0 } : {}),
    }),
    path(pts, how) {
      const path: Seg[] = pts.map(([x, y], i) => {
        const [px, py] = pt(x, y);
        return i === 0 ? move(px, py) : to(px, py);
      });
      if (how.closed) path.push(CLOSE);
      return {
        p: 'path',
        path,
        ...(how.stroke ? { stroke: how.stroke } : {}),
        ...(how.fill ? { fill: how.fill } : {}),
      };
    },
    circle(x, y, r, how) {
      const [px, py] = pt(x, y);
      return { p: 'circle', x: px, y: py, r: r * unit, ...how };
    },
  };
}
