import { expect, test } from 'vitest';
import { movedWalls } from '../../src/editor/moving/moved-walls.ts';
import { house, wall } from '../geometry/house.ts';

test('a partition that meets a wall at a slant stays on its middle line when that is moved', () => {
  const plan = house({ walls: [wall('w', [0, 0], [6000, 0]), wall('slant', [2000, 0], [4000, 2000])] });
  const moved = movedWalls(plan, [{ wall: 'w', by: { x: 0, y: -300 } }]);
  expect(moved.walls.slant?.a).toEqual({ x: 1700, y: -300 });
  expect(movedWalls(moved, [{ wall: 'w', by: { x: 0, y: 300 } }]).walls).toEqual(plan.walls);
});

test('a wall in line with one that is moved aside stays where it is', () => {
  const plan = house({ walls: [wall('w', [0, 0], [3000, 0]), wall('next', [3050, 0], [6000, 0])] });
  const moved = movedWalls(plan, [{ wall: 'w', by: { x: 12, y: 90 } }]);
  expect(moved.walls.next).toEqual(plan.walls.next);
  expect(movedWalls(moved, [{ wall: 'w', by: { x: -12, y: -90 } }]).walls).toEqual(plan.walls);
});
