import { expect, test } from 'vitest';
import type { Vec } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { AFTER, opening, PLAN_VIEW, page, room } from './small-plan.ts';

/** Every leaf of a door of this width as the two ends of its line. */
function leaves(widthMm: number): [Vec, Vec][] {
  const plan = room(page());
  opening(plan, 'd', 'w-s').widthMm = widthMm;
  const door = fragments(plan, PLAN_VIEW, AFTER).find((f) => f.map === 'openings');
  return (door?.items ?? []).flatMap((i) => {
    if (i.t !== 'line' || i.style.ink !== 'doorLeaf') return [];
    return i.pts.slice(1).map((p, n): [Vec, Vec] => [i.pts[n] as Vec, p]);
  });
}

test.each([
  [762, 1],
  [1800, 2],
  [2800, 4],
])('a door of %i has %i leaves, none longer than can be carried', (width, count) => {
  const all = leaves(width);
  expect(all).toHaveLength(count);
  for (const [p, q] of all) expect(Math.hypot(p[0] - q[0], p[1] - q[1])).toBeCloseTo(width / count, 3);
});

test('leaves that fold hang together and end on the wall', () => {
  const all = leaves(2800);
  for (const [i, [p]] of all.slice(1).entries()) expect(p).toEqual(all[i]?.[1]);
  expect(all.at(-1)?.[1][1]).toBeCloseTo(all[0]?.[0][1] ?? Number.NaN, 6);
});
