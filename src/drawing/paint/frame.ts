import type { Spread, Vec } from '../display-list.ts';
import type { Medium } from '../look/tokens.ts';
import { spreadMm } from './spread.ts';

/** From the view's plane (mm, y up) to where it is painted (px or mm of a sheet, y down). */
export interface Frame {
  /** Units painted for one mm of the plane. */
  readonly perMm: number;
  /** Units painted for one mm of paper. */
  readonly perPaperMm: number;
  /** Where the plane's (0, 0) is painted. */
  readonly origin: Vec;
  /** Turns the drawing clockwise as painted; text stays upright. */
  readonly turnDeg: number;
  /** Thinnest pen, in units painted. */
  readonly leastPen: number;
  readonly medium: Medium;
}

/** mm of the plane for one mm of paper: 50 at 1:50. */
export const mmPerPaperMm = (frame: Frame): number => frame.perPaperMm / frame.perMm;

/** A frame of a sheet in mm of paper at 1:`scale`, with the plane's `topLeft` at `at` on the sheet. */
export function sheetFrame(scale: number, topLeft: Vec, at: Vec = [0, 0], medium: Medium = 'sheet'): Frame {
  return {
    perMm: 1 / scale,
    perPaperMm: 1,
    origin: [at[0] - topLeft[0] / scale, at[1] + topLeft[1] / scale],
    turnDeg: 0,
    leastPen: 0,
    medium,
  };
}

/** A direction of the plane as it is painted: turned, and y down. */
export function turned(frame: Frame, v: Vec): Vec {
  if (frame.turnDeg === 0) return [v[0], -v[1]];
  const a = (frame.turnDeg * Math.PI) / 180;
  const c = Math.cos(a);
  const s = Math.sin(a);
  return [v[0] * c + v[1] * s, v[0] * s - v[1] * c];
}

/** Where a place is painted. `offsetMm` is paper mm, x right and y up on the paper whatever way the drawing is turned. */
export function place(frame: Frame, at: Vec, spread?: Spread, offsetMm?: Vec): Vec {
  const moved = spread ? spreadMm(spread, mmPerPaperMm(frame)) : undefined;
  const [x, y] = turned(frame, moved ? [at[0] + moved[0], at[1] + moved[1]] : at);
  const ox = offsetMm ? offsetMm[0] * frame.perPaperMm : 0;
  const oy = offsetMm ? -offsetMm[1] * frame.perPaperMm : 0;
  return [frame.origin[0] + x * frame.perMm + ox, frame.origin[1] + y * frame.perMm + oy];
}

/** The other way: the place in the plane under something painted. */
export function unplace(frame: Frame, painted: Vec): Vec {
  const x = (painted[0] - frame.origin[0]) / frame.perMm;
  const y = (painted[1] - frame.origin[1]) / frame.perMm;
  const a = (frame.turnDeg * Math.PI) / 180;
  const c = Math.cos(a);
  const s = Math.sin(a);
  return [x * c + y * s, x * s - y * c];
}
