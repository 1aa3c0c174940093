import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asLaid,
  closingError,
  isMeasuring,
  lastTakesError,
  layChain,
  outOf,
  spreadError,
  type ToldWall,
  type WallChain,
} from '../../src/editor/tools/wall-chain.ts';
import { distance, sub } from '../../src/geometry/vec.ts';
import type { Xy } from '../../src/plan/records/parts.ts';

const wall = (turnDeg: number, mm: number, more: Partial<ToldWall> = {}): ToldWall => ({
  turnDeg,
  mm,
  sizes: 'inside',
  thicknessMm: 100,
  ...more,
});
const chain = (...walls: ToldWall[]): WallChain => ({ start: { x: 0, y: 0 }, headingDeg: 90, walls, startInMm: null });
const round = (corners: readonly Xy[]) =>
  corners.map((p) => [Math.round(p.x * 10) / 10 + 0, Math.round(p.y * 10) / 10 + 0]);

describe('walls told as a chain', () => {
  test('inside sizes are between the faces of the walls at both ends', () => {
    const room = chain(wall(0, 3600), wall(-90, 2800), wall(-90, 3600), wall(-90, 2800));
    const corners = layChain(room, true);
    expect(round(corners)).toEqual([
      [0, 0],
      [0, 3700],
      [2900, 3700],
      [2900, 0],
      [0, 0],
    ]);
    expect(closingError(corners)?.mm).toBeCloseTo(0, 6);
    // While it is open, the ends that meet nothing yet are taken to meet a wall like themselves.
    expect(round(layChain(chain(wall(0, 3600))))).toEqual([
      [0, 0],
      [0, 3700],
    ]);
  });

  test('outside sizes are as much less along the middle, middle ones are what they are', () => {
    const outside = { sizes: 'outside' } as const;
    const walls = [wall(0, 3600, outside), wall(-90, 2800, outside), wall(-90, 3600, { sizes: 'middle' })];
    expect(round(layChain(chain(...walls)))).toEqual([
      [0, 0],
      [0, 3500],
      [2700, 3500],
      [2700, -100],
    ]);
  });

  test('a corner that turns away from the room takes its share off', () => {
    // An L: right, right, left, right, right, right as walked inside.
    const turns = [0, -90, -90, 90, -90, -90];
    const inside = [4000, 3000, 2500, 1000, 1500, 4000];
    const corners = layChain(chain(...turns.map((t, i) => wall(t, inside[i] ?? 0))), true);
    expect(closingError(corners)?.mm).toBeCloseTo(0, 6);
    expect(round(corners)[3]).toEqual([3100, 1600]);
  });

  test('walls of two thicknesses meet at the faces of each other', () => {
    const thick = { thicknessMm: 300 };
    const corners = layChain(chain(wall(0, 3600), wall(-90, 2800, thick), wall(-90, 3600), wall(-90, 2800)), true);
    expect(closingError(corners)?.mm).toBeCloseTo(0, 6);
    expect(round(corners)[1]).toEqual([0, 3800]);
  });

  test('a start within a wall that stands is measured from its face', () => {
    expect(outOf({ x: 0, y: 0 }, { x: 4000, y: 0 }, 200, { x: 1000, y: 0 }, 90)).toBeCloseTo(100);
    expect(outOf({ x: 0, y: 0 }, { x: 4000, y: 0 }, 200, { x: 1000, y: 100 }, 90)).toBeCloseTo(0);
    expect(outOf({ x: 0, y: 0 }, { x: 4000, y: 0 }, 200, { x: 1000, y: 300 }, 90)).toBeNull();
    expect(outOf({ x: 0, y: 0 }, { x: 4000, y: 0 }, 200, { x: 1000, y: 0 }, 0)).toBeNull();
    const told = { ...chain(wall(0, 2000)), startInMm: 100 };
    expect(round(layChain(told))).toEqual([
      [0, 0],
      [0, 2150],
    ]);
  });

  test('the closing error is told along the last wall and square to it', () => {
    const error = closingError([
      { x: 0, y: 0 },
      { x: 0, y: 3000 },
      { x: 4000, y: 3000 },
      { x: 4000, y: 12 },
      { x: -30, y: 12 },
    ]);
    expect(error).toMatchObject({ alongMm: 30, acrossMm: -12, lengthMm: 3000 + 4000 + 2988 + 4030 });
    expect(error && isMeasuring(error)).toBe(true);
    expect(isMeasuring({ mm: 900, alongMm: 900, acrossMm: 0, lengthMm: 14_000 })).toBe(false);
  });

  test('a wall that goes straight on or straight back has no corner to be measured to', () => {
    for (const turn of [0, 180]) {
      for (const p of layChain(chain(wall(0, 1000), wall(turn, 800)))) expect(Number.isFinite(p.x + p.y)).toBe(true);
    }
  });
});

describe('spreading the closing error', () => {
  const legs = fc.array(
    fc.record({ turnDeg: fc.integer({ min: -150, max: 150 }), mm: fc.integer({ min: 300, max: 9000 }) }),
    { minLength: 3, maxLength: 12 },
  );

  test('closes exactly, and changes each wall in proportion to its length', () => {
    fc.assert(
      fc.property(legs, fc.integer({ min: 0, max: 359 }), (told, headingDeg) => {
        const corners = layChain({ ...chain(...told.map((l) => wall(l.turnDeg, l.mm))), headingDeg });
        const error = closingError(corners);
        if (!error || error.mm === 0) return;
        const spread = spreadError(corners);
        expect(spread).toHaveLength(corners.length);
        expect(spread.at(-1)).toBe(spread[0]);
        const off = sub(corners.at(-1) ?? { x: 0, y: 0 }, corners[0] ?? { x: 0, y: 0 });
        for (let i = 1; i < corners.length; i++) {
          const was = sub(corners[i]!, corners[i - 1]!);
          const now = sub(spread[i]!, spread[i - 1]!);
          const share = distance(corners[i]!, corners[i - 1]!) / error.lengthMm;
          expect(was.x - now.x).toBeCloseTo(off.x * share, 6);
          expect(was.y - now.y).toBeCloseTo(off.y * share, 6);
        }
      }),
    );
  });

  test('or the last wall takes it, and the others stay', () => {
    fc.assert(
      fc.property(legs, (told) => {
        const corners = layChain(chain(...told.map((l) => wall(l.turnDeg, l.mm))));
        const closed = lastTakesError(corners);
        expect(closed.slice(0, -1)).toEqual(corners.slice(0, -1));
        expect(closed.at(-1)).toBe(closed[0]);
      }),
    );
  });

  test('walls taken as they lie lie where they lay', () => {
    fc.assert(
      fc.property(legs, (told) => {
        const before = chain(...told.map((l) => wall(l.turnDeg, l.mm)));
        const corners = layChain(before);
        for (const [i, p] of layChain(asLaid(before, corners)).entries()) {
          expect(distance(p, corners[i]!)).toBeLessThan(1e-6);
        }
      }),
    );
  });
});
