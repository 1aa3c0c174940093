import { describe, expect, test } from 'vitest';
import { fittedTo, pushedBy, showing, zoomedIn } from '../../src/view/iso/iso-camera.ts';
import { nextOf } from '../../src/view/iso/next-of.ts';
import { showsIn } from '../../src/view/stage/beside.ts';
import { shareWithin } from '../../src/view/stage/plan-share.ts';
import { page, run } from '../drawing/small-plan.ts';

describe('what a tap chooses', () => {
  const plan = page();
  run(plan, 'g', [
    [0, 0, 0],
    [1000, 0, 0],
  ]);
  const leg = { map: 'legs', id: 'g-1' } as const;
  const node = { map: 'nodes', id: 'g.1' } as const;

  test('the first under the finger, then the next, then the whole run, then the first again', () => {
    expect(nextOf(plan, [node, leg], [])).toEqual(node);
    expect(nextOf(plan, [node, leg], [node])).toEqual(leg);
    expect(nextOf(plan, [node, leg], [leg])).toEqual({ map: 'runs', id: 'g' });
    expect(nextOf(plan, [node, leg], [{ map: 'runs', id: 'g' }])).toEqual(node);
  });

  test('nothing where nothing lies, and the first where something else was chosen', () => {
    expect(nextOf(plan, [], [leg])).toBeNull();
    expect(nextOf(plan, [leg], [node])).toEqual(leg);
    expect(nextOf(plan, [leg], [leg, node])).toEqual(leg);
  });
});

describe('which panes show', () => {
  test('both where there is room beside each other, else one', () => {
    expect(showsIn({ width: 736, height: 700 }, false, true)).toBe('plan');
    expect(showsIn({ width: 736, height: 700 }, true, true)).toBe('both');
    expect(showsIn({ width: 344, height: 640 }, true, true)).toBe('beside');
    expect(showsIn({ width: 344, height: 640 }, true, false)).toBe('plan');
    expect(showsIn({ width: 648, height: 1060 }, true, true)).toBe('beside');
  });

  test('neither pane is parted away', () => {
    expect([0, 24.6, 50.4, 90].map(shareWithin)).toEqual([25, 25, 50, 75]);
  });
});

describe('its camera', () => {
  const box = { minX: 0, minY: 0, maxX: 6000, maxY: 3000 };

  test('all of a box, in the middle', () => {
    const camera = fittedTo(box, 400, 600);
    expect(camera.centre).toEqual([3000, 1500]);
    expect(6000 / camera.mmPerPx).toBeLessThan(400);
  });

  test('what lies under the fingers stays there', () => {
    const camera = fittedTo(box, 400, 600);
    const near = zoomedIn(camera, 2, [100, -50]);
    const under = (c: typeof camera) => [c.centre[0] + 100 * c.mmPerPx, c.centre[1] + 50 * c.mmPerPx];
    expect(under(near)[0]).toBeCloseTo(under(camera)[0] ?? 0, 6);
    expect(under(near)[1]).toBeCloseTo(under(camera)[1] ?? 0, 6);
  });

  test('pushed by px; moved only to what does not show', () => {
    const camera = { centre: [0, 0] as const, mmPerPx: 10 };
    expect(pushedBy(camera, 5, 7).centre).toEqual([-50, 70]);
    const small = { minX: 100, minY: 100, maxX: 300, maxY: 200 };
    expect(showing(camera, small, 400, 400)).toBe(camera);
    expect(showing(camera, { ...small, maxX: 9000 }, 400, 400).centre[0]).toBe(4550);
  });
});
