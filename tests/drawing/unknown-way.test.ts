import { describe, expect, test } from 'vitest';
import type { LineItem } from '../../src/drawing/display-list.ts';
import { styleOf } from '../../src/drawing/look/style-of.ts';
import { PEN } from '../../src/drawing/look/tokens.ts';
import type { Frame } from '../../src/drawing/paint/frame.ts';
import { linePrims } from '../../src/drawing/paint/line-prims.ts';
import { legStyle } from '../../src/drawing/pipes/leg-style.ts';

const FRAME: Frame = { perMm: 1, perPaperMm: 1, origin: [0, 0], turnDeg: 0, leastPen: 0, medium: 'screen' };
const stretch = (length: number, strip = false): LineItem => ({
  t: 'line',
  pts: [
    [0, 0],
    [length, 0],
  ],
  style: legStyle('heatingFlow', strip ? 'strip' : 'there', true, true),
});

function inked(item: LineItem) {
  return linePrims(item, FRAME, styleOf('day')).flatMap((prim) => {
    if (prim.p !== 'path') return [];
    const xs = prim.path.flatMap((s) => ('x' in s ? [s.x] : []));
    return [{ from: Math.min(...xs), to: Math.max(...xs), width: prim.stroke?.width ?? 0 }];
  });
}

describe('a pipe whose way nobody knows', () => {
  test('is drawn at its ends and hinted at between them', () => {
    const drawn = inked(stretch(100));
    const thick = drawn.filter((d) => d.width === PEN.assumedOuter);
    expect(thick.map((d) => [d.from, d.to])).toEqual([
      [0, PEN.unseenEnds],
      [100 - PEN.unseenEnds, 100],
    ]);
    const hint = drawn.filter((d) => d.width === PEN.unknownWay);
    expect(hint.map((d) => [d.from, d.to])).toEqual([[PEN.unseenEnds, 100 - PEN.unseenEnds]]);
  });

  test('is drawn whole where it is short', () => {
    const thick = inked(stretch(2 * PEN.unseenEnds)).filter((d) => d.width === PEN.assumedOuter);
    expect(thick.map((d) => [d.from, d.to])).toEqual([[0, 2 * PEN.unseenEnds]]);
  });

  test('is struck at both ends where it is to come out', () => {
    const middles = inked(stretch(100, true))
      .filter((d) => d.to - d.from === 2 * PEN.stripCrossHalf)
      .map((d) => (d.from + d.to) / 2);
    expect(middles).toEqual([PEN.unseenEnds / 2, 100 - PEN.unseenEnds / 2]);
  });
});
