import { describe, expect, test } from 'vitest';
import { LENS, LENS_HEIGHT, lensPlace } from '../../src/view/hands/lens-place.ts';
import { LIST, listPlace } from '../../src/view/hands/list-place.ts';

const TABLET = { width: 736, height: 700 };
const PHONE = { width: 344, height: 664 };
const HANDS = ['left', 'right'] as const;

describe.each([
  ['tablet', TABLET],
  ['phone', PHONE],
] as const)('on a %s', (_, room) => {
  const all = (step: number): (readonly [number, number])[] => {
    const found: (readonly [number, number])[] = [];
    for (let x = 0; x <= room.width; x += step) for (let y = 0; y <= room.height; y += step) found.push([x, y]);
    return found;
  };

  test('the lens is whole in the room and never under the finger', () => {
    for (const [x, y] of all(13)) {
      for (const hand of HANDS) {
        const { left, top } = lensPlace(x, y, room, hand);
        expect(
          [left >= 0, top >= 0, left + LENS.width <= room.width, top + LENS_HEIGHT <= room.height],
          `${x},${y}`,
        ).toEqual([true, true, true, true]);
        const under = x > left - 20 && x < left + LENS.width + 20 && y > top - 20 && y < top + LENS_HEIGHT + 20;
        // On a narrow page a finger in the middle of its top has no side with room enough.
        const noRoom = y < LENS_HEIGHT + 60 && x > room.width - LENS.width - 72 && x < LENS.width + 72;
        expect(under && !noRoom, `${x},${y} ${hand}`).toBe(false);
      }
    }
  });

  test('the list is in the room and never on the tap', () => {
    for (const [x, y] of all(17)) {
      for (const rows of [2, 3, 6, 9]) {
        const { left, top, height } = listPlace(x, y, rows, room);
        expect(
          [left >= 0, top >= 0, left + LIST.width <= room.width, top + height <= room.height],
          `${x},${y}`,
        ).toEqual([true, true, true, true]);
        const on = x > left - 10 && x < left + LIST.width + 10 && y > top - 10 && y < top + height + 10;
        expect(on, `${x},${y} ${rows}`).toBe(false);
        expect(height).toBeGreaterThanOrEqual(Math.min(rows, 3) * LIST.row);
      }
    }
  });
});

test('with room the lens stands above; at the top it goes to the side the drawing hand leaves free', () => {
  expect(lensPlace(400, 400, TABLET, 'right').top).toBeLessThan(400 - LENS_HEIGHT);
  expect(lensPlace(400, 60, TABLET, 'right').left).toBeLessThan(400 - LENS.width);
  expect(lensPlace(400, 60, TABLET, 'left').left).toBeGreaterThan(400);
  expect(lensPlace(60, 60, TABLET, 'right').left).toBeGreaterThan(60);
});
