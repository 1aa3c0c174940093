import { describe, expect, test } from 'vitest';
import { broughtInto, cameraOn, pushed, zoomed } from '../../src/view/flue-face/face-camera.ts';
import { sayDistance } from '../../src/view/flue-face/say-distance.ts';
import { distance } from '../drawing/flue-face-fixture.ts';

const BOX = { minX: 0, minY: 0, maxX: 8000, maxY: 4000 };

describe('how the face is looked at', () => {
  test('all of a box with room round it', () => {
    const camera = cameraOn(BOX, 900, 900, [50, 50]);
    expect(camera).toEqual({ centre: [4000, 2000], mmPerPx: 10 });
    expect(cameraOn({ minX: 5, minY: 5, maxX: 5, maxY: 5 }, 900, 900, [50, 50]).mmPerPx).toBeGreaterThan(0);
  });

  test('what lies under the fingers stays there', () => {
    const camera = { centre: [100, 200], mmPerPx: 10 } as const;
    const about = [30, -40] as const;
    const under = (c: { centre: readonly [number, number]; mmPerPx: number }) => [
      c.centre[0] + about[0] * c.mmPerPx,
      c.centre[1] - about[1] * c.mmPerPx,
    ];
    const near = zoomed(camera, 2, about);
    expect(near.mmPerPx).toBe(5);
    expect(under(near)).toEqual(under(camera));
    expect(zoomed(camera, 1e9).mmPerPx).toBeGreaterThan(0.1);
  });

  test('a push moves the drawing with the finger', () => {
    expect(pushed({ centre: [0, 0], mmPerPx: 10 }, 5, 7)).toEqual({ centre: [-50, 70], mmPerPx: 10 });
  });

  test('what is in sight is left where it is', () => {
    const camera = { centre: [4000, 2000], mmPerPx: 10 } as const;
    expect(broughtInto(camera, BOX, 900, 900)).toBe(camera);
    expect(broughtInto(camera, { minX: 20000, minY: 0, maxX: 20100, maxY: 100 }, 900, 900)).toEqual({
      centre: [20050, 50],
      mmPerPx: 10,
    });
  });
});

test('a distance in a breath', () => {
  const told = distance({
    row: 'below-eaves',
    from: [0, 0, 0],
    to: [0, 0, 140],
    found: 140,
    wanted: 200,
    state: 'stop',
  });
  expect(sayDistance(told)).toBe('below eaves: stop, 140 mm found, 200 mm wanted');
  expect(sayDistance({ ...told, wanted: null, state: 'none' })).toBe('below eaves, 140 mm found');
});
