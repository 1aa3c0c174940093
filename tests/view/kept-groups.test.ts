import { describe, expect, test } from 'vitest';
import type { Item } from '../../src/drawing/display-list.ts';
import { sameIds, seenBox } from '../../src/view/stage/culled.ts';
import { byGroup, keepSame } from '../../src/view/stage/picture.ts';

const items = (): readonly Item[] => [];
const part = (group: 'wall' | 'run', of: readonly Item[]) => ({ group, items: of });

describe('what did not change is not drawn again', () => {
  test('a group with the same parts is the same list; one with another part is not', () => {
    const [wall, run, moved] = [items(), items(), items()];
    const before = byGroup([part('wall', wall), part('run', run)]);
    const now = keepSame(before, byGroup([part('wall', wall), part('run', moved)]));
    expect(now.get('wall')).toBe(before.get('wall'));
    expect(now.get('run')).not.toBe(before.get('run'));
  });

  test('a group that lost or gained a part is another list', () => {
    const wall = items();
    const before = byGroup([part('wall', wall), part('wall', wall)]);
    expect(keepSame(before, byGroup([part('wall', wall)])).get('wall')).toHaveLength(1);
    expect(keepSame(before, byGroup([])).get('wall')).toBeUndefined();
  });

  test('order within a group is kept', () => {
    const [a, b] = [items(), items()];
    expect(
      byGroup([part('run', a), part('wall', b), part('run', b)])
        .get('run')
        ?.map((p) => p.items),
    ).toEqual([a, b]);
  });

  test('a set with the same ids is the same set', () => {
    expect(sameIds(new Set(['a', 'b']), new Set(['b', 'a']))).toBe(true);
    expect(sameIds(new Set(['a']), new Set(['a', 'b']))).toBe(false);
    expect(sameIds(new Set(['a']), new Set(['b']))).toBe(false);
  });
});

test('what is seen reaches past the pane by so many px', () => {
  const pane = { camera: { centre: [0, 0] as const, mmPerPx: 10 }, width: 100, height: 60 };
  expect(seenBox(pane, 0)).toEqual({ minX: -500, minY: -300, maxX: 500, maxY: 300 });
  expect(seenBox(pane, 5)).toEqual({ minX: -550, minY: -350, maxX: 550, maxY: 350 });
});
