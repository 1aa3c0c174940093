import { describe, expect, test } from 'vitest';
import type { Fragment, View } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { madeSoFar } from '../../src/drawing/memo/remember.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import { demo, frozen } from './demo.ts';
import { AFTER, BEFORE, PLAN_VIEW, page, room, run } from './small-plan.ts';

const VIEWS: readonly View[] = [
  { kind: 'plan', storey: 'B' },
  { kind: 'face', wall: 'BN', side: 'right' },
];

const key = (f: Fragment): string => `${f.map} ${f.id} ${f.layer}`;

/** Fragments that are other objects than before. */
function renewed(before: readonly Fragment[], after: readonly Fragment[]): string[] {
  const were = new Set(before);
  return after.filter((f) => !were.has(f)).map(key);
}

function changed(plan: Plan, change: (draft: Plan) => Plan): Plan {
  return frozen(change(plan));
}

const raise = (plan: Plan, node: string, by: number): Plan => {
  const was = plan.nodes[node];
  if (was?.place.on !== 'storey') throw new Error(`no free node ${node}`);
  const place = { ...was.place, height: { ...was.place.height, mm: was.place.height.mm + by } };
  return { ...plan, nodes: { ...plan.nodes, [node]: { ...was, place } } };
};

describe('fragments are kept', () => {
  test.each(VIEWS)('the same plan gives the same fragments and makes nothing: %o', (view) => {
    const plan = demo('flat');
    const first = fragments(plan, view, AFTER);
    const made = madeSoFar();
    const second = fragments(plan, view, AFTER);
    expect(first.length).toBeGreaterThan(20);
    expect(renewed(first, second)).toEqual([]);
    expect(madeSoFar()).toBe(made);
  });

  test('what does not touch the drawing renews nothing', () => {
    const plan = demo('flat');
    const view = VIEWS[0] as View;
    const before = fragments(plan, view, AFTER);
    const made = madeSoFar();
    const renamed = changed(plan, (p) => ({ ...p, name: 'Other', job: { ...p.job, note: 'seen' } }));
    expect(renewed(before, fragments(renamed, view, AFTER))).toEqual([]);
    expect(madeSoFar()).toBe(made);
  });

  test('a renamed point renews itself alone', () => {
    const plan = demo('flat');
    const hob = plan.points['B-HB'];
    if (!hob) throw new Error('the flat has a hob');
    const before = fragments(plan, VIEWS[0] as View, AFTER);
    const after = fragments(
      changed(plan, (p) => ({ ...p, points: { ...p.points, 'B-HB': { ...hob, fields: { ...hob.fields } } } })),
      VIEWS[0] as View,
      AFTER,
    );
    const all = renewed(before, after);
    // Pipes that end at the hob lean on it; nothing else does.
    expect(all).toContain('points B-HB point');
    expect(all.length).toBeLessThanOrEqual(6);
    expect(all.some((k) => k.startsWith('walls') || k.startsWith('rooms') || k.startsWith('voids'))).toBe(false);
  });

  test('a pipe moved elsewhere leaves a pipe that it does not touch', () => {
    const plan = room(page());
    run(plan, 'far', [
      [100, 100, 100],
      [900, 100, 100],
      [900, 900, 100],
    ]);
    run(plan, 'near', [
      [3000, 2000, 500],
      [3600, 2000, 500],
      [3600, 2600, 500],
    ]);
    frozen(plan);
    const before = fragments(plan, PLAN_VIEW, AFTER);
    const after = fragments(
      changed(plan, (p) => raise(p, 'near.1', 50)),
      PLAN_VIEW,
      AFTER,
    );
    const all = renewed(before, after);
    expect(all).toContain('legs near-1 run');
    expect(all.filter((k) => k.includes('far'))).toEqual([]);
  });

  test('undo gives the fragments of before back without making them', () => {
    const plan = demo('flat');
    const view = VIEWS[0] as View;
    const before = fragments(plan, view, AFTER);
    const node = Object.values(plan.nodes).find((n) => n.place.on === 'storey' && n.id.startsWith('B-f1'));
    if (!node) throw new Error('the heating flow has a corner');
    fragments(
      changed(plan, (p) => raise(p, node.id, 100)),
      view,
      AFTER,
    );
    expect(fragments(plan, view, AFTER).map(key)).toEqual(before.map(key));
    const made = madeSoFar();
    fragments(plan, view, AFTER);
    expect(madeSoFar()).toBe(made);
  });

  test('a case change renews only what stands otherwise', () => {
    const plan = room(page());
    run(
      plan,
      'old',
      [
        [100, 100, 100],
        [900, 100, 100],
      ],
      { option: null },
    );
    run(plan, 'new', [
      [100, 500, 100],
      [900, 500, 100],
    ]);
    frozen(plan);
    const cases: readonly Case[] = [BEFORE, AFTER];
    const [before, after] = cases.map((c) => fragments(plan, PLAN_VIEW, c)) as [
      readonly Fragment[],
      readonly Fragment[],
    ];
    expect(before.some((f) => f.id === 'new-1')).toBe(false);
    expect(renewed(before, after).every((k) => k.includes('new'))).toBe(true);
  });

  test('a wall that moves takes what is hosted on it along', () => {
    const plan = demo('flat');
    const wall = plan.walls.BN;
    if (!wall) throw new Error('the flat has a north wall');
    const before = fragments(plan, VIEWS[0] as View, AFTER);
    const moved = changed(plan, (p) => ({
      ...p,
      walls: { ...p.walls, BN: { ...wall, a: { ...wall.a, y: wall.a.y + 100 }, b: { ...wall.b, y: wall.b.y + 100 } } },
    }));
    const all = renewed(before, fragments(moved, VIEWS[0] as View, AFTER));
    for (const opening of ['bw3', 'bw4', 'bw5']) expect(all.some((k) => k.includes(opening))).toBe(true);
    expect(all).not.toContain('openings e1 opening');
  });
});
