import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BoxedPipe, smallestBox } from '../../../src/engine/structure/smallest-box.ts';

const GAPS = { between: 25, gas: 25, over: 25, board: 12 };
const pipe = fc.record({
  name: fc.constantFrom('gas', 'flow', 'cold'),
  odMm: fc.constantFrom(15, 22, 28, 35),
  insulationMm: fc.constantFrom(0, 9, 13, 19),
  gas: fc.boolean(),
});
const row = fc.array(pipe, { minLength: 1, maxLength: 7 });
const half = (p: BoxedPipe): number => p.odMm / 2 + p.insulationMm;

describe('the smallest box', () => {
  test('holds the pipes in the order given, clear of each other and of its sides', () => {
    fc.assert(
      fc.property(row, (pipes) => {
        const box = smallestBox(pipes, GAPS);
        const ends = pipes.map((p, i) => [(box.middles[i] ?? 0) - half(p), (box.middles[i] ?? 0) + half(p)] as const);
        expect(ends[0]?.[0]).toBeCloseTo(GAPS.over / 2, 6);
        expect(ends.at(-1)?.[1]).toBeCloseTo(box.innerWidth.lo - GAPS.over / 2, 6);
        for (const [i, [from]] of ends.entries()) {
          if (i > 0) expect(from - (ends[i - 1]?.[1] ?? 0)).toBeGreaterThanOrEqual(GAPS.between - 1e-9);
        }
        for (const p of pipes) expect(box.innerDepth.lo).toBeGreaterThanOrEqual(2 * half(p) + GAPS.over - 1e-9);
      }),
    );
  });

  test('is as wide the other way round, and no narrower with one pipe more', () => {
    fc.assert(
      fc.property(row, pipe, (pipes, more) => {
        const width = smallestBox(pipes, GAPS).innerWidth.lo;
        expect(smallestBox([...pipes].reverse(), GAPS).innerWidth.lo).toBeCloseTo(width, 6);
        expect(smallestBox([...pipes, more], GAPS).innerWidth.lo).toBeGreaterThan(width);
      }),
    );
  });

  test('gas 22, flow 28 lagged 13, cold 15: by hand', () => {
    const box = smallestBox(
      [
        { name: 'gas', odMm: 22, insulationMm: 0, gas: true },
        { name: 'flow', odMm: 28, insulationMm: 13, gas: false },
        { name: 'cold', odMm: 15, insulationMm: 0, gas: false },
      ],
      GAPS,
    );
    // 12.5 + 22 + 25 + 54 + 25 + 15 + 12.5, and the lagged flow with 25 over it.
    expect(box.innerWidth.lo).toBe(166);
    expect(box.innerDepth.lo).toBe(79);
    expect([box.outerInCorner.lo, box.outerOnWall.lo, box.outerDepth.lo]).toEqual([178, 190, 91]);
  });

  test('a wider clearance of gas moves its neighbours only', () => {
    const pipes = [15, 15, 15].map((odMm, i) => ({ name: `${i}`, odMm, insulationMm: 0, gas: i === 0 }));
    const [near, far] = [smallestBox(pipes, GAPS), smallestBox(pipes, { ...GAPS, gas: 60 })];
    expect((far.middles[1] ?? 0) - (near.middles[1] ?? 0)).toBe(35);
    expect((far.middles[2] ?? 0) - (far.middles[1] ?? 0)).toBe((near.middles[2] ?? 0) - (near.middles[1] ?? 0));
  });

  test('round nothing there is none', () => {
    expect(() => smallestBox([], GAPS)).toThrow('no pipe');
  });
});
