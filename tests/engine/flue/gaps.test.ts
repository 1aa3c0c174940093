import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apart, gapOf, gapWithout } from '../../../src/engine/flue/gaps.ts';
import type { Box3 } from '../../../src/geometry/boxes.ts';

const box = (minX: number, maxX: number, minZ: number, maxZ: number, minY = 0, maxY = 0): Box3 => ({
  minX,
  maxX,
  minY,
  maxY,
  minZ,
  maxZ,
});
const TERMINAL = box(-50, 50, 0, 100);

describe('between a terminal and something near it', () => {
  test.each([
    ['straight above', box(-600, 600, 400, 1400), 300],
    ['straight below', box(-600, 600, -1000, -200), 200],
    ['to the side', box(350, 900, -200, 800), 300],
    ['askew', box(350, 900, 500, 800), 500],
    ['overlapping', box(0, 900, 50, 800), 0],
    ['touching', box(50, 900, 0, 100), 0],
  ])('%s', (_name, far, mm) => {
    expect(gapOf(TERMINAL, far).mm).toBeCloseTo(mm, 6);
  });

  test('the places are the nearest of both', () => {
    const { from, to } = gapOf(TERMINAL, box(350, 900, 500, 800));
    expect(from).toMatchObject({ x: 50, z: 100 });
    expect(to).toMatchObject({ x: 350, z: 500 });
  });

  test('out from the wall counts in space, not in the face', () => {
    const far = box(350, 900, 0, 100, 400, 450);
    expect(gapOf(TERMINAL, far).mm).toBeCloseTo(500, 6);
    expect(gapWithout('Y', TERMINAL, far).mm).toBeCloseTo(300, 6);
  });

  test('an assumed height widens it: least where they come nearest, most at an end', () => {
    const far = box(-600, 600, 400, 1400);
    expect(gapOf(TERMINAL, far, { lo: -350, hi: 200 })).toMatchObject({ mm: 300, lo: 0, hi: 500 });
    expect(gapOf(TERMINAL, far, { lo: -100, hi: 0 })).toMatchObject({ mm: 300, lo: 200, hi: 300 });
  });
});

const coordinate = fc.integer({ min: -3000, max: 3000 });
const anyBox = fc
  .tuple(coordinate, fc.integer({ min: 0, max: 2000 }), coordinate, fc.integer({ min: 0, max: 2000 }))
  .map(([x, w, z, h]) => box(x, x + w, z, z + h));

describe('of any two', () => {
  test('it is the same from either', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (p, q) => {
        expect(gapOf(p, q).mm).toBeCloseTo(gapOf(q, p).mm, 6);
      }),
    );
  });

  test('moving straight away never brings it nearer', () => {
    fc.assert(
      fc.property(anyBox, fc.integer({ min: 0, max: 2000 }), fc.boolean(), (far, by, upright) => {
        const near = gapOf(TERMINAL, far);
        const away = (lo: number, hi: number, a: number, b: number): number => (lo + hi > a + b ? 1 : -1) * by;
        const dx = upright ? 0 : away(far.minX, far.maxX, TERMINAL.minX, TERMINAL.maxX);
        const dz = upright ? away(far.minZ, far.maxZ, TERMINAL.minZ, TERMINAL.maxZ) : 0;
        const moved = { ...far, minX: far.minX + dx, maxX: far.maxX + dx, minZ: far.minZ + dz, maxZ: far.maxZ + dz };
        expect(gapOf(TERMINAL, moved).mm).toBeGreaterThanOrEqual(near.mm - 1e-9);
      }),
    );
  });

  test('the bounds hold every place the height may have', () => {
    const rise = fc.tuple(fc.integer({ min: -500, max: 0 }), fc.integer({ min: 0, max: 500 }));
    fc.assert(
      fc.property(anyBox, rise, fc.double({ min: 0, max: 1, noNaN: true }), (far, [lo, hi], part) => {
        const bounds = gapOf(TERMINAL, far, { lo, hi });
        const s = lo + (hi - lo) * part;
        const { mm } = gapOf(TERMINAL, { ...far, minZ: far.minZ + s, maxZ: far.maxZ + s });
        expect(mm).toBeGreaterThanOrEqual(bounds.lo - 1e-9);
        expect(mm).toBeLessThanOrEqual(bounds.hi + 1e-9);
      }),
    );
  });

  test('what overlaps is not apart', () => {
    expect(apart(0, 10, 5, 20)).toBe(0);
    expect(apart(0, 10, 15, 20)).toBe(5);
    expect(apart(15, 20, 0, 10)).toBe(5);
  });
});
