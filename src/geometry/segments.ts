import type { Xyz } from '../plan/records/parts.ts';
import { type Box3, boxOf, grow } from './boxes.ts';
import { add3, distance3, dot3, scale3, sub3 } from './vec.ts';

/** A straight line between two places in space. */
export interface Line3 {
  readonly a: Xyz;
  readonly b: Xyz;
}

/** The nearest two places of two things: how far apart, where on each, and how far along each (0 at a, 1 at b). */
export interface Nearest {
  readonly distance: number;
  readonly onA: Xyz;
  readonly onB: Xyz;
  readonly s: number;
  readonly t: number;
}

const clamp01 = (n: number): number => Math.min(1, Math.max(0, n));

export const alongLine = (line: Line3, t: number): Xyz => add3(line.a, scale3(sub3(line.b, line.a), t));

/** Nearest place of a segment to a place: how far along it, 0 to 1. */
export function nearestOnSegment(p: Xyz, line: Line3): number {
  const d = sub3(line.b, line.a);
  const l2 = dot3(d, d);
  return l2 === 0 ? 0 : clamp01(dot3(sub3(p, line.a), d) / l2);
}

/**
 * Shortest distance between two segments in space. Where a whole stretch is equally near (parallel pipes), the places
 * given are the middle of that stretch. Segments of no length are taken as places.
 */
export function segmentDistance(first: Line3, second: Line3): Nearest {
  const d1 = sub3(first.b, first.a);
  const d2 = sub3(second.b, second.a);
  const r = sub3(first.a, second.a);
  const a = dot3(d1, d1);
  const e = dot3(d2, d2);
  const b = dot3(d1, d2);
  const c = dot3(d1, r);
  const f = dot3(d2, r);
  const det = a * e - b * b;
  // Relative to both lengths: an angle, not a length, decides what counts as parallel.
  if (a > 0 && e > 0 && det > 1e-12 * a * e) {
    const s = clamp01((b * f - c * e) / det);
    const t = clamp01((b * s + f) / e);
    return nearest(first, second, clamp01((b * t - c) / a), t);
  }
  if (a === 0 || e === 0) return ofPlace(first, second, a === 0);
  return ofParallel(first, second);
}

function nearest(first: Line3, second: Line3, s: number, t: number): Nearest {
  const onA = alongLine(first, s);
  const onB = alongLine(second, t);
  return { distance: distance3(onA, onB), onA, onB, s, t };
}

function ofPlace(first: Line3, second: Line3, firstIsPlace: boolean): Nearest {
  return firstIsPlace
    ? nearest(first, second, 0, nearestOnSegment(first.a, second))
    : nearest(first, second, nearestOnSegment(second.a, first), 0);
}

/** Parallel: the ends of each seen from the other, and where they overlap, the middle of the overlap. */
function ofParallel(first: Line3, second: Line3): Nearest {
  const d = sub3(first.b, first.a);
  const l2 = dot3(d, d);
  const [u, v] = [second.a, second.b].map((p) => dot3(sub3(p, first.a), d) / l2) as [number, number];
  const [lo, hi] = [Math.max(0, Math.min(u, v)), Math.min(1, Math.max(u, v))];
  const s = lo <= hi ? (lo + hi) / 2 : Math.min(u, v) > 1 ? 1 : 0;
  return nearest(first, second, s, nearestOnSegment(alongLine(first, s), second));
}

/** A pipe as a body: a segment with a radius in mm. */
export interface Capsule extends Line3 {
  readonly radiusMm: number;
}

/** From surface to surface; below zero by how far they run into each other. Places are on the centrelines. */
export function capsuleGap(first: Capsule, second: Capsule): Nearest & { readonly gapMm: number } {
  const found = segmentDistance(first, second);
  return { ...found, gapMm: found.distance - first.radiusMm - second.radiusMm };
}

export const capsuleBox = (c: Capsule): Box3 => grow(boxOf([c.a, c.b]), c.radiusMm);
