import type { Box, Spread, Vec } from '../display-list.ts';
import { spreadMm } from '../paint/spread.ts';

/** Labels are placed in mm of paper, x right and y up, with the plane's own origin. */
export interface Paper {
  readonly mmPerPaperMm: number;
  at(place: Vec, spread?: Spread): Vec;
}

export function paperAt(mmPerPaperMm: number): Paper {
  return {
    mmPerPaperMm,
    at(place, spread) {
      const moved = spread ? spreadMm(spread, mmPerPaperMm) : undefined;
      return [(place[0] + (moved?.[0] ?? 0)) / mmPerPaperMm, (place[1] + (moved?.[1] ?? 0)) / mmPerPaperMm];
    },
  };
}

export const boxAt = (x: number, y: number, w: number, h: number): Box => ({
  minX: x - w / 2,
  minY: y - h / 2,
  maxX: x + w / 2,
  maxY: y + h / 2,
});

export const grow = (b: Box, by: number): Box => ({
  minX: b.minX - by,
  minY: b.minY - by,
  maxX: b.maxX + by,
  maxY: b.maxY + by,
});

export const overlap = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

export const holds = (b: Box, [x, y]: Vec): boolean => x > b.minX && x < b.maxX && y > b.minY && y < b.maxY;

/** Does a piece of line touch a box? The part of the line inside each pair of sides is cut down until nothing is left. */
export function touches(b: Box, p: Vec, q: Vec): boolean {
  let lo = 0;
  let hi = 1;
  for (const [from, to, min, max] of [
    [p[0], q[0], b.minX, b.maxX],
    [p[1], q[1], b.minY, b.maxY],
  ] as const) {
    const d = to - from;
    if (Math.abs(d) < 1e-9) {
      if (from <= min || from >= max) return false;
      continue;
    }
    const [s, t] = [(min - from) / d, (max - from) / d];
    lo = Math.max(lo, Math.min(s, t));
    hi = Math.min(hi, Math.max(s, t));
  }
  return lo < hi;
}

/** The part of a line inside a box; undefined where none is. */
export function clipTo(b: Box, p: Vec, q: Vec): [Vec, Vec] | undefined {
  let lo = 0;
  let hi = 1;
  for (const [from, to, min, max] of [
    [p[0], q[0], b.minX, b.maxX],
    [p[1], q[1], b.minY, b.maxY],
  ] as const) {
    const d = to - from;
    if (Math.abs(d) < 1e-9) {
      if (from < min || from > max) return undefined;
      continue;
    }
    const [s, t] = [(min - from) / d, (max - from) / d];
    lo = Math.max(lo, Math.min(s, t));
    hi = Math.min(hi, Math.max(s, t));
  }
  if (lo >= hi) return undefined;
  const at = (t: number): Vec => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
  return [at(lo), at(hi)];
}

export function encloses(ring: readonly Vec[], [x, y]: Vec): boolean {
  let inside = false;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length] ?? p;
    if (p[1] > y !== q[1] > y && x < ((q[0] - p[0]) * (y - p[1])) / (q[1] - p[1]) + p[0]) inside = !inside;
  });
  return inside;
}

/** Does a box lie wholly inside a ring: a corner in it, and none of its edges touched? */
export const liesIn = (ring: readonly Vec[], b: Box): boolean =>
  encloses(ring, [b.minX, b.minY]) && !ring.some((p, i) => touches(b, p, ring[(i + 1) % ring.length] ?? p));
