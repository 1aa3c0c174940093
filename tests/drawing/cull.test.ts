import { describe, expect, test } from 'vitest';
import { cull } from '../../src/drawing/cull.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { liveFragments } from '../../src/drawing/live-fragments.ts';
import { madeSoFar } from '../../src/drawing/memo/remember.ts';
import { AFTER, field, PLAN_VIEW } from './small-plan.ts';

const WINDOW = { minX: 2000, minY: 2000, maxX: 8000, maxY: 6000 };

describe('culling', () => {
  test.each([1000, 3000])('at %i runs a window of 6 m by 4 m looks at no more than 200 records', (count) => {
    const all = fragments(field(count), PLAN_VIEW, AFTER);
    const seen = cull(all, WINDOW, 200);
    expect(seen.visited).toBeLessThanOrEqual(200);
    expect(seen.fragments.length).toBeGreaterThan(50);
  });

  test('keeps painter order and leaves out nothing that shows', () => {
    const all = fragments(field(100), PLAN_VIEW, AFTER);
    const seen = new Set(cull(all, WINDOW).fragments);
    const meant = all.filter(
      (f) =>
        f.box.minX <= WINDOW.maxX &&
        f.box.maxX >= WINDOW.minX &&
        f.box.minY <= WINDOW.maxY &&
        f.box.maxY >= WINDOW.minY,
    );
    expect([...seen]).toEqual(meant);
  });

  test('one list is indexed once', () => {
    const all = fragments(field(10), PLAN_VIEW, AFTER);
    expect(cull(all, WINDOW).fragments).toEqual(cull(all, WINDOW).fragments);
  });
});

describe('what moves in a gesture', () => {
  test('is drawn alone, and nothing is kept of it', () => {
    const plan = field(400);
    const still = fragments(plan, PLAN_VIEW, AFTER);
    const draft = { ...plan, nodes: { ...plan.nodes } };
    const was = plan.nodes['r7.1'];
    if (was?.place.on !== 'storey') throw new Error('r7.1 is a free corner');
    draft.nodes['r7.1'] = { ...was, place: { ...was.place, y: was.place.y + 50 } };
    const made = madeSoFar();
    const live = liveFragments(plan, draft, PLAN_VIEW, AFTER, new Set(['r7-1', 'r7-2', 'r7.1']));
    expect(madeSoFar()).toBe(made);
    expect(live.map((f) => [f.map, f.id])).toEqual([
      ['legs', 'r7-1'],
      ['legs', 'r7-2'],
      ['nodes', 'r7.1'],
    ]);
    expect(fragments(plan, PLAN_VIEW, AFTER)).toEqual(still);
    expect(madeSoFar()).toBe(made);
  });
});
