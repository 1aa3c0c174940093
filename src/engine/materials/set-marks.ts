import { bendArc, bendGain, bendSetback } from './bend-length.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Marks of a set, mm along the tube from where its first bend starts. */
export interface SetMarks {
  /** Corner to corner of the centre lines along the slope. */
  readonly slopeMm: number;
  /** How far the set reaches along the wall. */
  readonly alongMm: number;
  /** From the start of one bend to the start of the next. */
  readonly betweenMm: number;
  /** Straight tube left between two bends; below zero they run into each other. */
  readonly straightMm: number;
  /** Tube taken by the whole, against the two straights it joins. */
  readonly gainMm: number;
}

/** Two bends of one angle that carry a pipe over to a parallel line `offsetMm` away. Angle above 0 and below 90. */
export function setMarks(offsetMm: number, deg: number, radiusMm: number): SetMarks {
  const slopeMm = offsetMm / Math.sin(rad(deg));
  const setback = bendSetback(radiusMm, deg);
  return {
    slopeMm,
    alongMm: offsetMm / Math.tan(rad(deg)),
    betweenMm: slopeMm - 2 * setback + bendArc(radiusMm, deg),
    straightMm: slopeMm - 2 * setback,
    gainMm: 2 * bendGain(radiusMm, deg),
  };
}

/** Three bends over an obstacle `heightMm` to the centre line: the outer ones of `deg`, the middle one twice that, below 180. */
export function passoverMarks(heightMm: number, deg: number, radiusMm: number): SetMarks {
  const slopeMm = heightMm / Math.sin(rad(deg));
  const outer = bendSetback(radiusMm, deg);
  const middle = bendSetback(radiusMm, 2 * deg);
  return {
    slopeMm,
    alongMm: 2 * (heightMm / Math.tan(rad(deg))),
    betweenMm: slopeMm - outer - middle + bendArc(radiusMm, deg),
    straightMm: slopeMm - outer - middle,
    gainMm: 2 * bendGain(radiusMm, deg) + bendGain(radiusMm, 2 * deg),
  };
}
