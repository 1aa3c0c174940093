import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passoverMarks, setMarks } from '../../../src/engine/materials/set-marks.ts';

const angle = fc.double({ min: 5, max: 80, noNaN: true });
const offset = fc.double({ min: 5, max: 2000, noNaN: true });
const radius = fc.double({ min: 20, max: 200, noNaN: true });

/** Walks the centre line: straight pieces and arcs, each from where the last one ended; gives where it ends up. */
function walk(pieces: readonly { readonly mm: number; readonly deg: number }[]): { x: number; y: number; deg: number } {
  let [x, y, deg] = [0, 0, 0];
  for (const piece of pieces) {
    const steps = piece.deg === 0 ? 1 : 4000;
    for (let i = 0; i < steps; i++) {
      deg += piece.deg / steps / 2;
      x += (piece.mm / steps) * Math.cos((deg * Math.PI) / 180);
      y += (piece.mm / steps) * Math.sin((deg * Math.PI) / 180);
      deg += piece.deg / steps / 2;
    }
  }
  return { x, y, deg };
}
const arc = (r: number, deg: number): number => (r * Math.abs(deg) * Math.PI) / 180;

describe('marks of a set and of a passover', () => {
  test('tube bent by the marks of a set comes out at the offset, straight again', () => {
    fc.assert(
      fc.property(offset, angle, radius, (o, a, r) => {
        const m = setMarks(o, a, r);
        fc.pre(m.straightMm >= 0);
        const end = walk([
          { mm: arc(r, a), deg: a },
          { mm: m.betweenMm - arc(r, a), deg: 0 },
          { mm: arc(r, a), deg: -a },
        ]);
        expect(end.y).toBeCloseTo(o, 1);
        expect(end.deg).toBeCloseTo(0, 6);
        // What it reaches along the wall is the two corners and what each outer leg gave up.
        const setback = r * Math.tan((a * Math.PI) / 360);
        expect(end.x).toBeCloseTo(m.alongMm + 2 * setback, 1);
      }),
      { numRuns: 40 },
    );
  });

  test('tube bent by the marks of a passover rises by its height in the middle and comes back', () => {
    fc.assert(
      fc.property(offset, fc.double({ min: 5, max: 60, noNaN: true }), radius, (h, a, r) => {
        const m = passoverMarks(h, a, r);
        fc.pre(m.straightMm >= 0);
        const half = [
          { mm: arc(r, a), deg: a },
          { mm: m.betweenMm - arc(r, a), deg: 0 },
        ];
        const end = walk([
          ...half,
          { mm: arc(r, 2 * a), deg: -2 * a },
          { mm: m.straightMm, deg: 0 },
          { mm: arc(r, a), deg: a },
        ]);
        expect(end.y).toBeCloseTo(0, 1);
        expect(end.deg).toBeCloseTo(0, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('straight tube, both bends and the saving are the way from corner to corner and its ends', () => {
    const m = setMarks(100, 45, 60);
    expect(m.slopeMm).toBeCloseTo(141.42, 2);
    expect(m.betweenMm).toBeCloseTo(138.84, 2);
    expect(m.gainMm).toBeCloseTo(2 * (2 * 24.853 - 47.124), 2);
  });
});
