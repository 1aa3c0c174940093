import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isConvexQuad, project, squarePicture } from '../../src/geometry/quad.ts';
import {
  pixelAt,
  planeAt,
  scaledAbout,
  squaredBox,
  squaredBy,
  type TracePlace,
  toNearestQuarter,
  turnedAbout,
} from '../../src/geometry/trace-place.ts';

const pixels = { width: 1200, height: 900 };
const flat: TracePlace = { x: 500, y: -200, mmPerPixel: 4, angleDeg: 30, opacity: 0.5, locked: false };
const close = (a: { x: number; y: number } | undefined, b: { x: number; y: number }, within = 1e-6) => {
  expect(Math.hypot((a?.x ?? Number.NaN) - b.x, (a?.y ?? Number.NaN) - b.y)).toBeLessThan(within);
};
const place = fc.record({
  x: fc.double({ min: 0, max: 1200, noNaN: true }),
  y: fc.double({ min: 0, max: 900, noNaN: true }),
});

/** A door as a camera sees it: looking up a little and from the left. */
const DOOR = [
  { x: 410, y: 820 },
  { x: 650, y: 790 },
  { x: 640, y: 210 },
  { x: 430, y: 150 },
];

describe('a picture laid under the drawing', () => {
  test('its lower left corner is its place', () => {
    close(planeAt(flat, pixels, { x: 0, y: 900 }), { x: 500, y: -200 });
  });

  test('there and back is the same pixel', () => {
    fc.assert(fc.property(place, (p) => close(pixelAt(flat, pixels, planeAt(flat, pixels, p) ?? p), p, 1e-6)));
  });

  test('scaling about a place keeps it and stretches every length alike', () => {
    const about = { x: 900, y: 100 };
    const on = pixelAt(flat, pixels, about) ?? about;
    const big = scaledAbout(flat, about, 2.5);
    close(planeAt(big, pixels, on), about);
    const before = planeAt(flat, pixels, { x: 10, y: 10 });
    const after = planeAt(big, pixels, { x: 10, y: 10 });
    expect(Math.hypot((after?.x ?? 0) - 900, (after?.y ?? 0) - 100)).toBeCloseTo(
      2.5 * Math.hypot((before?.x ?? 0) - 900, (before?.y ?? 0) - 100),
      6,
    );
  });

  test('a line is turned to the nearer of level and upright', () => {
    expect(toNearestQuarter({ x: 0, y: 0 }, { x: 100, y: 10 })).toBeCloseTo(-5.7106, 4);
    expect(toNearestQuarter({ x: 0, y: 0 }, { x: -10, y: 100 })).toBeCloseTo(-5.7106, 4);
    const [a, b] = [
      { x: 700, y: 0 },
      { x: 1700, y: 80 },
    ];
    const [pa, pb] = [pixelAt(flat, pixels, a), pixelAt(flat, pixels, b)];
    const level = turnedAbout(flat, a, toNearestQuarter(a, b));
    close(planeAt(level, pixels, pa ?? a), a);
    expect(planeAt(level, pixels, pb ?? b)?.y).toBeCloseTo(0, 6);
  });
});

describe('a photo squared by a rectangle of known size', () => {
  const squared = squarePicture(DOOR, 762, 1981);

  test('its corners lie on the rectangle', () => {
    const want = [
      { x: 0, y: 0 },
      { x: 762, y: 0 },
      { x: 762, y: 1981 },
      { x: 0, y: 1981 },
    ];
    DOOR.forEach((corner, i) => {
      close(squared && project(squared.toPlane, corner), want[i] ?? corner, 1e-6);
    });
  });

  test('the meeting of the diagonals is the middle of the rectangle, as perspective has it', () => {
    const [a, b, c, d] = DOOR as [
      { x: number; y: number },
      { x: number; y: number },
      { x: number; y: number },
      { x: number; y: number },
    ];
    const cross = (p: { x: number; y: number }, q: { x: number; y: number }) => p.x * q.y - p.y * q.x;
    const r = { x: c.x - a.x, y: c.y - a.y };
    const s = { x: d.x - b.x, y: d.y - b.y };
    const t = cross({ x: b.x - a.x, y: b.y - a.y }, s) / cross(r, s);
    const meet = { x: a.x + t * r.x, y: a.y + t * r.y };
    close(squared && project(squared.toPlane, meet), { x: 381, y: 990.5 }, 1e-6);
  });

  test('there and back over the whole rectangle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 762, noNaN: true }),
        fc.double({ min: 0, max: 1981, noNaN: true }),
        (x, y) => {
          const pixel = squared && project(squared.toPixel, { x, y });
          close(pixel && squared && project(squared.toPlane, pixel), { x, y }, 1e-5);
        },
      ),
    );
  });

  test('taps on the plane square it, and the first stays where it was', () => {
    const upright: TracePlace = { ...flat, angleDeg: 0 };
    const taps = DOOR.map((c) => planeAt(upright, pixels, c) ?? c);
    const now = squaredBy(upright, pixels, taps, 762, 1981);
    expect(now).toBeDefined();
    if (!now) return;
    close(planeAt(now, pixels, DOOR[0] ?? { x: 0, y: 0 }), taps[0] ?? { x: 0, y: 0 });
    const corner = planeAt(now, pixels, DOOR[2] ?? { x: 0, y: 0 });
    close(corner, { x: (taps[0]?.x ?? 0) + 762, y: (taps[0]?.y ?? 0) + 1981 }, 1e-5);
    const box = squaredBox(now, pixels);
    expect(box && box.maxX > 762 && box.minX < 0).toBe(true);
  });

  test('crossed or straight corners make no rectangle', () => {
    const [a, b, c, d] = DOOR;
    expect(isConvexQuad([a, c, b, d].flatMap((p) => p ?? []))).toBe(false);
    expect(
      squarePicture(
        [a, b, b, d].flatMap((p) => p ?? []),
        762,
        1981,
      ),
    ).toBeUndefined();
  });
});
