import { describe, expect, test } from 'vitest';
import type { Pane } from '../../src/editor/editor-api.ts';
import { fitted, panned, toPixels, toPlane, wheelFactor, zoomed } from '../../src/editor/input/camera.ts';
import { editorOf } from './hand.ts';

const pane: Pane = {
  view: { kind: 'plan', storey: 'ground' },
  camera: { centre: [1000, 500], mmPerPx: 10 },
  width: 800,
  height: 600,
};

describe('the camera', () => {
  test('y goes up the sheet and down the screen', () => {
    expect(toPlane(pane, 400, 300)).toEqual([1000, 500]);
    expect(toPlane(pane, 401, 299)).toEqual([1010, 510]);
    expect(toPixels(pane, [1010, 510])).toEqual([401, 299]);
  });

  test('what is under the finger stays under it', () => {
    const was = toPlane(pane, 123, 77);
    const near = { ...pane, camera: zoomed(pane, 123, 77, 3) };
    const [x, y] = toPlane(near, 123, 77);
    expect(x).toBeCloseTo(was[0], 9);
    expect(y).toBeCloseTo(was[1], 9);
    const moved = { ...pane, camera: panned(pane.camera, 20, -8) };
    expect(toPlane(moved, 143, 69)).toEqual(was);
  });

  test('nearness has an end both ways', () => {
    expect(zoomed(pane, 0, 0, 1e9).mmPerPx).toBe(0.02);
    expect(zoomed(pane, 0, 0, 1e-9).mmPerPx).toBe(400);
  });

  test('shows a whole box with room round it, and leaves an empty page alone', () => {
    const all = { ...pane, camera: fitted(pane, { minX: 0, minY: 0, maxX: 7200, maxY: 1000 }) };
    expect(all.camera.centre).toEqual([3600, 500]);
    expect(toPixels(all, [0, 500])[0]).toBe(40);
    expect(fitted(pane, null)).toBe(pane.camera);
  });

  test('a wheel turned away comes nearer, a pinch on the trackpad goes further for the same turn', () => {
    expect(wheelFactor(-100, false)).toBeGreaterThan(1);
    expect(wheelFactor(-100, true)).toBeGreaterThan(wheelFactor(-100, false));
    expect(wheelFactor(1e9, false)).toBe(wheelFactor(600, false));
  });

  test('wheel, two fingers on the trackpad and fit never touch history', () => {
    const editor = editorOf();
    const at = { pane: 'plan', x: 10, y: 10, deltaX: 0, ctrl: false } as const;
    const before = editor.store.getState().panes.plan.camera;
    editor.wheel({ ...at, deltaY: 120, pixelMode: false });
    expect(editor.store.getState().panes.plan.camera.mmPerPx).toBeGreaterThan(before.mmPerPx);
    const zoomedOut = editor.store.getState().panes.plan.camera;
    editor.wheel({ ...at, deltaX: 30, deltaY: 12, pixelMode: true });
    const { camera } = editor.store.getState().panes.plan;
    expect(camera.mmPerPx).toBe(zoomedOut.mmPerPx);
    expect(camera.centre[0]).toBeGreaterThan(zoomedOut.centre[0]);
    editor.zoomToFit();
    expect(editor.store.getState()).toMatchObject({ revision: 0, history: { undo: [], redo: [] } });
  });
});
