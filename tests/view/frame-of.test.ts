import { describe, expect, test } from 'vitest';
import { unplace } from '../../src/drawing/paint/frame.ts';
import type { Camera } from '../../src/editor/editor-api.ts';
import { frameOf, shiftBetween, toPx } from '../../src/view/stage/frame-of.ts';

const camera: Camera = { centre: [1000, 2000], mmPerPx: 10 };
const pane = { camera, width: 800, height: 600 };

describe('the frame of a pane', () => {
  test('puts the centre of the camera in the middle, y upwards', () => {
    expect(toPx(pane, [1000, 2000])).toEqual([400, 300]);
    expect(toPx(pane, [1100, 2100])).toEqual([410, 290]);
    const [x, y] = unplace(frameOf(pane), [410, 290]);
    expect(x).toBeCloseTo(1100);
    expect(y).toBeCloseTo(2100);
  });

  test('an offset of paper does not change with the scale', () => {
    const near = { ...pane, camera: { ...pane.camera, mmPerPx: 1 } };
    const off = (p: typeof pane) => toPx(p, [1000, 2000], [10, 5]).map((n) => Math.round(n * 100) / 100);
    expect(off(pane)).toEqual(off(near));
    expect(off(pane)).toEqual([434, 283]);
  });
});

describe('a picture shown with another camera before it is drawn again', () => {
  const shown = (at: readonly [number, number], drawn: Camera, now: Camera) => {
    const [x, y] = toPx({ ...pane, camera: drawn }, at);
    const s = shiftBetween(drawn, now, pane.width, pane.height);
    return [x * s.scale + s.x, y * s.scale + s.y];
  };

  test.each<[string, Camera]>([
    ['panned', { centre: [1300, 1900], mmPerPx: 10 }],
    ['nearer', { centre: [1000, 2000], mmPerPx: 4 }],
    ['both', { centre: [-250, 2700], mmPerPx: 23 }],
  ])('%s: every place lies where the sharp picture will have it', (_, now) => {
    for (const at of [
      [1000, 2000],
      [0, 0],
      [4321, -99],
    ] as const) {
      const [x, y] = toPx({ ...pane, camera: now }, at);
      const [sx, sy] = shown(at, pane.camera, now);
      expect(sx).toBeCloseTo(x);
      expect(sy).toBeCloseTo(y);
    }
  });

  test('the same camera: not moved at all', () => {
    expect(shiftBetween(pane.camera, pane.camera, 800, 600)).toEqual({ x: 0, y: 0, scale: 1 });
  });
});
