import { expect, test } from 'vitest';
import { overDrawing } from '../../src/view/stage/over-drawing.ts';

/** One mm a px, its middle in the middle: x from -400 to 400, y from -350 to 350. */
const pane = {
  camera: { centre: [0, 0] as const, mmPerPx: 1 },
  width: 800,
  height: 700,
  view: { kind: 'plan', storey: 'G' } as const,
};
const atTop = (floors: readonly string[], folded: Parameters<typeof overDrawing>[1] = null) =>
  overDrawing(pane, folded, floors).filter((b) => b.maxY > 300 && b.maxX - b.minX > 50);

test('labels keep off the keys of the floors, as wide as their names', () => {
  const [keys] = atTop(['Ground floor', 'First floor']);
  expect(keys?.maxX).toBe(384);
  expect(keys?.minY).toBeLessThan(300);
  const [more] = atTop(['Ground floor', 'First floor', 'Second floor']);
  expect(more?.minX).toBeLessThan(keys?.minX ?? Number.NaN);
});

test('no keys, no room taken: one floor only, or a wall folded up', () => {
  expect(atTop(['Ground floor'])).toEqual([]);
  expect(atTop(['Ground floor', 'First floor'], { face: 400, plan: 256 })).toEqual([]);
});
