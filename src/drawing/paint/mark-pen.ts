import type { MarkItem, Vec } from '../display-list.ts';
import type { Look } from '../look/style-of.ts';
import { PEN } from '../look/tokens.ts';
import { type Frame, mmPerPaperMm, place } from './frame.ts';
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

/** Half of what a mark takes on paper, for those that can be drawn smaller. */
const HALF_MM: Readonly<Record<string, number>> = {
  rise: PEN.riseRadius,
  drop: PEN.riseRadius,
  wedge: 5,
  wedgeUnder: 5,
};
/** Smaller than this part of itself a mark is a blot. */
const LEAST = 0.55;
/** On a screen, marks grow smaller from this scale on, as rooms do. */
const SMALLER_FROM = 50;

function shrunk(item: MarkItem, frame: Frame): number {
  const half = HALF_MM[item.mark];
  if (half === undefined) return 1;
  const k = mmPerPaperMm(frame);
  const room = item.roomMm === undefined ? 1 : item.roomMm / k / half;
  const byScale = frame.medium === 'screen' ? SMALLER_FROM / k : 1;
  return Math.min(1, Math.max(LEAST, Math.min(room, byScale)));
}

/** Is there room for a mark that says little, and is left out rather than drawn over its neighbours? */
export function hasRoom(item: MarkItem, frame: Frame): boolean {
  const half = HALF_MM[item.mark];
  if (half === undefined || item.roomMm === undefined || !item.mark.startsWith('wedge')) return true;
  return item.roomMm / mmPerPaperMm(frame) >= half * LEAST;
}

export function markPen(item: MarkItem, frame: Frame, look: Look): MarkPen {
  const at = place(frame, item.at, item.spread, item.offsetMm);
  const unit = frame.perPaperMm;
  const a = ((item.turnDeg - frame.turnDeg) * Math.PI) / 180;
  const c = Math.cos(a);
  const s = Math.sin(a);
  const by = unit * shrunk(item, frame);
  const pt = (x: number, y: number): Vec => [at[0] + (x * c - y * s) * by, at[1] - (x * s + y * c) * by];
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
      return { p: 'circle', x: px, y: py, r: r * by, ...how };
    },
  };
}
