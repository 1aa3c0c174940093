import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box3 } from '../../src/geometry/boxes.ts';
import { nearestInBox, segmentToBox } from '../../src/geometry/segment-box.ts';
import { alongLine, capsuleGap, type Line3, nearestOnSegment, segmentDistance } from '../../src/geometry/segments.ts';
import { distance3 } from '../../src/geometry/vec.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';

const mm = fc.integer({ min: -3000, max: 3000 });
const place: fc.Arbitrary<Xyz> = fc.record({ x: mm, y: mm, z: mm });
const segment: fc.Arbitrary<Line3> = fc.record({ a: place, b: place });
/** Pipes run along the axes, so that parallel, touching and crossing ones come up often. */
const square: fc.Arbitrary<Line3> = fc
  .tuple(place, fc.constantFrom('x' as const, 'y' as const, 'z' as const), mm)
  .map(([a, axis, far]) => ({ a, b: { ...a, [axis]: far } }));
const either = fc.oneof(segment, square);

/** For every sampled place of one, the nearest of the other is exact: the least of them is at most a step too long. */
function sampled(first: Line3, second: Line3, steps: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= steps; i++) {
    const p = alongLine(first, i / steps);
    least = Math.min(least, distance3(p, alongLine(second, nearestOnSegment(p, second))));
  }
  return least;
}

const line = (a: [number, number, number], b: [number, number, number]): Line3 => ({
  a: { x: a[0], y: a[1], z: a[2] },
  b: { x: b[0], y: b[1], z: b[2] },
});

describe('distance between segments', () => {
  it('is that of crossing pipes between their centrelines', () => {
    const found = segmentDistance(line([0, 0, 0], [1000, 0, 0]), line([500, -200, 60], [500, 200, 60]));
    expect(found.distance).toBeCloseTo(60, 9);
    expect(found.onA).toEqual({ x: 500, y: 0, z: 0 });
    expect(found.onB).toEqual({ x: 500, y: 0, z: 60 });
  });

  it('names the middle of the stretch two parallel pipes share', () => {
    const found = segmentDistance(line([0, 0, 0], [1000, 0, 0]), line([400, 50, 0], [2000, 50, 0]));
    expect(found.distance).toBeCloseTo(50, 9);
    expect(found.onA.x).toBeCloseTo(700, 9);
    expect(found.onB.x).toBeCloseTo(700, 9);
  });

  it('goes from end to end where parallel pipes do not pass each other', () => {
    const found = segmentDistance(line([0, 0, 0], [100, 0, 0]), line([400, 40, 0], [900, 40, 0]));
    expect(found.distance).toBeCloseTo(Math.hypot(300, 40), 9);
    const other = segmentDistance(line([400, 40, 0], [900, 40, 0]), line([0, 0, 0], [100, 0, 0]));
    expect(other.distance).toBeCloseTo(Math.hypot(300, 40), 9);
  });

  it('takes a segment of no length as a place', () => {
    expect(segmentDistance(line([0, 0, 0], [0, 0, 0]), line([-10, 30, 0], [10, 30, 0])).distance).toBeCloseTo(30, 9);
    expect(segmentDistance(line([-10, 30, 0], [10, 30, 0]), line([0, 0, 0], [0, 0, 0])).distance).toBeCloseTo(30, 9);
    expect(segmentDistance(line([1, 2, 3], [1, 2, 3]), line([1, 2, 7], [1, 2, 7])).distance).toBeCloseTo(4, 9);
  });

  it('is the same both ways round, and whichever end comes first', () => {
    fc.assert(
      fc.property(either, either, (p, q) => {
        const there = segmentDistance(p, q).distance;
        expect(segmentDistance(q, p).distance).toBeCloseTo(there, 6);
        expect(segmentDistance({ a: p.b, b: p.a }, q).distance).toBeCloseTo(there, 6);
      }),
      { numRuns: 500 },
    );
  });

  it('is never longer than what sampling finds, and not shorter by more than a step', () => {
    fc.assert(
      fc.property(either, either, (p, q) => {
        const steps = 200;
        const exact = segmentDistance(p, q).distance;
        const rough = sampled(p, q, steps);
        expect(exact).toBeLessThanOrEqual(rough + 1e-6);
        expect(exact).toBeGreaterThanOrEqual(rough - distance3(p.a, p.b) / steps - 1e-6);
      }),
      { numRuns: 300 },
    );
  });

  it('names places on the segments that are so far apart', () => {
    fc.assert(
      fc.property(either, either, (p, q) => {
        const found = segmentDistance(p, q);
        expect(distance3(found.onA, found.onB)).toBeCloseTo(found.distance, 6);
        expect(distance3(found.onA, alongLine(p, found.s))).toBeLessThan(1e-6);
        expect(distance3(found.onB, alongLine(q, found.t))).toBeLessThan(1e-6);
        for (const n of [found.s, found.t]) expect(n >= 0 && n <= 1).toBe(true);
      }),
    );
  });
});

describe('gap between pipes', () => {
  it('is from surface to surface, and below zero where they run into each other', () => {
    const a = { ...line([0, 0, 0], [1000, 0, 0]), radiusMm: 11 };
    expect(capsuleGap(a, { ...line([0, 50, 0], [1000, 50, 0]), radiusMm: 14 }).gapMm).toBeCloseTo(25, 9);
    expect(capsuleGap(a, { ...line([500, -99, 10], [500, 99, 10]), radiusMm: 11 }).gapMm).toBeCloseTo(-12, 9);
  });
});

const boxes: fc.Arbitrary<Box3> = fc.tuple(place, place).map(([p, q]) => ({
  minX: Math.min(p.x, q.x),
  maxX: Math.max(p.x, q.x),
  minY: Math.min(p.y, q.y),
  maxY: Math.max(p.y, q.y),
  minZ: Math.min(p.z, q.z),
  maxZ: Math.max(p.z, q.z),
}));

describe('distance from a segment to a box', () => {
  const cube = { minX: 0, minY: 0, minZ: 0, maxX: 100, maxY: 100, maxZ: 100 };

  it('is nothing inside and through it', () => {
    expect(segmentToBox(line([50, 50, 50], [60, 50, 50]), cube).distance).toBe(0);
    expect(segmentToBox(line([-50, 50, 50], [150, 50, 50]), cube).distance).toBe(0);
  });

  it('is to the face, the edge or the corner that is nearest', () => {
    expect(segmentToBox(line([-500, 50, 130], [500, 50, 130]), cube).distance).toBeCloseTo(30, 9);
    expect(segmentToBox(line([-500, 130, 140], [500, 130, 140]), cube).distance).toBeCloseTo(50, 9);
    expect(segmentToBox(line([130, 140, 100], [230, 140, 100]), cube).distance).toBeCloseTo(50, 9);
    expect(segmentToBox(line([140, 80, -200], [80, 140, -100]), cube).onBox).toMatchObject({ x: 80, y: 100, z: 0 });
  });

  it('agrees with sampling', () => {
    fc.assert(
      fc.property(either, boxes, (p, box) => {
        const steps = 300;
        let rough = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= steps; i++) {
          const at = alongLine(p, i / steps);
          rough = Math.min(rough, distance3(at, nearestInBox(at, box)));
        }
        const found = segmentToBox(p, box);
        expect(found.distance).toBeLessThanOrEqual(rough + 1e-6);
        expect(found.distance).toBeGreaterThanOrEqual(rough - distance3(p.a, p.b) / steps - 1e-6);
        expect(distance3(found.onLine, found.onBox)).toBeCloseTo(found.distance, 6);
      }),
      { numRuns: 300 },
    );
  });
});
