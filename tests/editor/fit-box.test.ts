import { describe, expect, test } from 'vitest';
import type { Pane } from '../../src/editor/editor-api.ts';
import { fitted, toPixels } from '../../src/editor/input/camera.ts';
import { fitBox, marginsOf } from '../../src/editor/input/fit-box.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from '../drawing/demo.ts';
import { PLAN_VIEW, page, room, run } from '../drawing/small-plan.ts';

const pane = (width: number, height: number, view: Pane['view']): Pane => ({
  view,
  camera: { centre: [0, 0], mmPerPx: 10 },
  width,
  height,
});

describe('show all', () => {
  const flat = demo('flat');
  const view = { kind: 'plan', storey: 'B' } as const;

  test.each([
    [736, 700],
    [344, 640],
    [996, 780],
  ])('the flat in a pane of %i by %i: its walls fill it one way, with room about them', (width, height) => {
    const here = pane(width, height, view);
    const box = fitBox(flat, view);
    if (!box) throw new Error('the flat has walls');
    const margins = marginsOf(here);
    const shown = { ...here, camera: fitted(here, box, margins) };
    const [left, bottom] = toPixels(shown, [box.minX, box.minY]);
    const [right, top] = toPixels(shown, [box.maxX, box.maxY]);
    const room = [
      left - margins.left,
      width - right - margins.right,
      top - margins.top,
      height - bottom - margins.bottom,
    ];
    for (const px of room) expect(px).toBeGreaterThanOrEqual(-1e-6);
    const spare = Math.min((room[0] ?? 0) + (room[1] ?? 0), (room[2] ?? 0) + (room[3] ?? 0));
    expect(spare).toBeCloseTo(0, 6);
  });

  test('on a phone the flat takes nine tenths of the width', () => {
    const here = pane(344, 640, view);
    const box = fitBox(flat, view);
    const { mmPerPx } = fitted(here, box, marginsOf(here));
    expect(((box?.maxX ?? 0) - (box?.minX ?? 0)) / mmPerPx).toBeGreaterThan(0.9 * 344);
  });

  test('what stands far outside does not make the house small; a pipe out there does', () => {
    const plan = room(page());
    const alone = fitBox(plan, PLAN_VIEW);
    const window = Object.values(flat.points).find((p) => p.kind === 'neighbour-window');
    if (!window) throw new Error('the flat has a neighbour');
    const place = { on: 'storey', x: 20_000, y: 0, angleDeg: 0, height: { from: 'floor', of: 'S', mm: 900 } } as const;
    const far: Plan = { ...plan, points: { w: { ...window, id: 'w', storey: 'S', place } as typeof window } };
    expect(fitBox(far, PLAN_VIEW)).toEqual(alone);
    run(plan, 'g', [
      [0, 0, 100],
      [9000, 0, 100],
    ]);
    expect(fitBox({ ...plan }, PLAN_VIEW)?.maxX).toBe(9000);
  });

  test('with no walls the pipes, with neither nothing', () => {
    expect(fitBox(page(), PLAN_VIEW)).toBeNull();
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [4200, 2600, 100],
    ]);
    expect(fitBox(plan, PLAN_VIEW)).toEqual({ minX: 0, minY: 0, maxX: 4200, maxY: 2600 });
  });

  test('a picture under the floor is part of it; one under another floor or squared from a slant is not', () => {
    const place = { x: -3000, y: -1000, mmPerPixel: 10, angleDeg: 0, opacity: 0.5, locked: true };
    const trace = { id: 't', hash: 'h', kind: 'trace', name: 'plan', mediaType: 'image/png', on: 'S', place } as const;
    const laid = (change: object): Plan => ({
      ...page(),
      blobRefs: { t: { ...trace, pixels: { width: 1200, height: 900 }, ...change } },
    });
    expect(fitBox(laid({}), PLAN_VIEW)).toEqual({ minX: -3000, minY: -1000, maxX: 9000, maxY: 8000 });
    expect(fitBox(laid({ on: 'elsewhere' }), PLAN_VIEW)).toBeNull();
    const corners = [
      { x: 0, y: 0 },
      { x: 9, y: 0 },
      { x: 9, y: 9 },
      { x: 0, y: 9 },
    ];
    const square = { corners, widthMm: 800, heightMm: 2000 };
    expect(fitBox(laid({ place: { ...place, square } }), PLAN_VIEW)).toBeNull();
  });

  test('a face from floor to ceiling, the whole wall', () => {
    const box = fitBox(flat, { kind: 'face', wall: 'BN', side: 'right' });
    const wall = flat.walls.BN;
    expect(box?.maxX).toBeCloseTo(wall ? Math.hypot(wall.a.x - wall.b.x, wall.a.y - wall.b.y) : 0);
    expect((box?.maxY ?? 0) - (box?.minY ?? 0)).toBeGreaterThan(2000);
  });
});
