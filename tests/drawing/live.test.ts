import { describe, expect, test } from 'vitest';
import type { Fragment, LineItem } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { liveFragments } from '../../src/drawing/live-fragments.ts';
import { visitedSoFar } from '../../src/drawing/pipes/clusters.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { AFTER, field, PLAN_VIEW, page, run } from './small-plan.ts';

const moved = (plan: Plan, ids: readonly string[], dx: number, dy: number): Plan => {
  const nodes = { ...plan.nodes };
  for (const id of ids) {
    const was = nodes[id];
    if (was?.place.on !== 'storey') throw new Error(`no free node ${id}`);
    nodes[id] = { ...was, place: { ...was.place, x: was.place.x + dx, y: was.place.y + dy } };
  }
  return { ...plan, nodes };
};

const lineOf = (all: readonly Fragment[], id: string): LineItem | undefined =>
  all.filter((f) => f.id === id && f.map === 'legs').flatMap((f) => f.items.filter((i) => i.t === 'line'))[0];

const MOVED = new Set(['hot-1', 'hot.0', 'hot.1']);

describe('a pipe in the hand is drawn as it will lie', () => {
  test('beside another it is spread from it as when it has come to rest', () => {
    const plan = page();
    run(
      plan,
      'cold',
      [
        [0, 0, 100],
        [3000, 0, 100],
      ],
      { service: 'cold' },
    );
    run(
      plan,
      'hot',
      [
        [0, 900, 100],
        [3000, 900, 100],
      ],
      { service: 'hot' },
    );
    fragments(plan, PLAN_VIEW, AFTER);
    const draft = moved(plan, ['hot.0', 'hot.1'], 0, -840);
    const live = lineOf(liveFragments(plan, draft, PLAN_VIEW, AFTER, MOVED), 'hot-1');
    expect(live?.spread?.[0]).toHaveLength(1);
    expect(live).toEqual(lineOf(fragments(draft, PLAN_VIEW, AFTER), 'hot-1'));
  });

  test('under another it is broken where that passes over it', () => {
    const plan = page();
    run(
      plan,
      'cold',
      [
        [1000, -500, 900],
        [1000, 500, 900],
      ],
      { service: 'cold' },
    );
    run(
      plan,
      'hot',
      [
        [0, 900, 100],
        [3000, 900, 100],
      ],
      { service: 'hot' },
    );
    fragments(plan, PLAN_VIEW, AFTER);
    const draft = moved(plan, ['hot.0', 'hot.1'], 0, -800);
    const live = lineOf(liveFragments(plan, draft, PLAN_VIEW, AFTER, MOVED), 'hot-1');
    expect(live?.gaps?.map((g) => g.at)).toEqual([[1000, 100]]);
  });

  test('what stays is not drawn again, nor looked at beyond its reach', () => {
    const plan = field(1000);
    fragments(plan, PLAN_VIEW, AFTER);
    const before = visitedSoFar();
    const draft = moved(plan, ['r77.1'], 50, 0);
    const live = liveFragments(plan, draft, PLAN_VIEW, AFTER, new Set(['r77-1', 'r77-2', 'r77.1']));
    expect(new Set(live.map((f) => f.id))).toEqual(new Set(['r77-1', 'r77-2', 'r77.1']));
    expect(visitedSoFar()).toBe(before);
  });
});
