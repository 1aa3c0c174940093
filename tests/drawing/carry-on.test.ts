import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cull, indexedSoFar } from '../../src/drawing/cull.ts';
import type { Fragment, View } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { madeSoFar } from '../../src/drawing/memo/remember.ts';
import { visitedSoFar } from '../../src/drawing/pipes/clusters.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';
import { AFTER, BEFORE, field, PLAN_VIEW } from './small-plan.ts';

const moved = (plan: Plan, id: string, dx: number, dy: number): Plan => {
  const was = plan.nodes[id];
  if (was?.place.on !== 'storey') return plan;
  const place = { ...was.place, x: was.place.x + dx, y: was.place.y + dy };
  return { ...plan, nodes: { ...plan.nodes, [id]: { ...was, place } } };
};

const without = (plan: Plan, map: 'legs' | 'items' | 'points' | 'nodes' | 'walls', id: string): Plan => {
  const { [id]: _, ...rest } = plan[map] as Record<string, unknown>;
  return { ...plan, [map]: rest };
};

const said = (all: readonly Fragment[]): string => JSON.stringify(all);

describe('a drawing goes on from the last one', () => {
  const VIEWS: readonly View[] = [
    { kind: 'plan', storey: 'B' },
    { kind: 'plan', storey: 'B', turnDeg: 90 },
    { kind: 'face', wall: 'BN', side: 'right' },
  ];
  const edit = fc.record({
    what: fc.constantFrom('move', 'drop leg', 'drop item', 'drop point', 'drop wall', 'move point', 'service', 'back'),
    which: fc.nat(1000),
    dx: fc.integer({ min: -300, max: 300 }),
    dy: fc.integer({ min: -300, max: 300 }),
  });
  const pick = (map: object, n: number): string => Object.keys(map)[n % Math.max(1, Object.keys(map).length)] ?? '';

  test('after any edits it is what a drawing from nothing would be', () => {
    fc.assert(
      fc.property(
        fc.array(edit, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...VIEWS),
        fc.constantFrom(AFTER, BEFORE),
        (edits, view, chosen) => {
          const past: Plan[] = [demo('flat')];
          for (const { what, which, dx, dy } of edits) {
            const plan = past.at(-1) as Plan;
            let next = plan;
            if (what === 'move') next = moved(plan, pick(plan.nodes, which), dx, dy);
            else if (what === 'drop leg') next = without(plan, 'legs', pick(plan.legs, which));
            else if (what === 'drop item') next = without(plan, 'items', pick(plan.items, which));
            else if (what === 'drop point') next = without(plan, 'points', pick(plan.points, which));
            else if (what === 'drop wall') next = without(plan, 'walls', pick(plan.walls, which));
            else if (what === 'back') next = past[which % past.length] as Plan;
            else if (what === 'service') {
              const run = plan.runs[pick(plan.runs, which)];
              if (run) next = { ...plan, runs: { ...plan.runs, [run.id]: { ...run, service: 'cold' } } };
            } else {
              const point = plan.points[pick(plan.points, which)];
              if (point?.place.on === 'wall') {
                const place = { ...point.place, alongMm: point.place.alongMm + dx };
                next = { ...plan, points: { ...plan.points, [point.id]: { ...point, place, name: `n${which}` } } };
              }
            }
            past.push(next);
            const here = said(fragments(next, view, chosen));
            // Other objects all through: nothing of it is known, so all of it is made.
            expect(here).toBe(said(fragments(structuredClone(next), view, chosen)));
            fragments(next, view, chosen);
          }
        },
      ),
      { numRuns: 24 },
    );
  }, 20_000);

  test('what does not show gives the very same list', () => {
    const plan = demo('flat');
    const before = fragments(plan, VIEWS[0] as View, AFTER);
    expect(fragments({ ...plan, name: 'Other' }, VIEWS[0] as View, AFTER)).toBe(before);
  });
});

describe('after one change among 3000 runs', () => {
  test('only what is near it is looked at and made, and put in the index', () => {
    const plan = field(3000);
    const before = fragments(plan, PLAN_VIEW, AFTER);
    const window = { minX: 0, minY: 0, maxX: 5000, maxY: 5000 };
    cull(before, window);
    const counts = [visitedSoFar(), madeSoFar(), indexedSoFar()];
    const next = moved(plan, 'r77.1', 40, 0);
    const after = fragments(next, PLAN_VIEW, AFTER);
    const seen = cull(after, window);
    const [visited, made, put] = [visitedSoFar(), madeSoFar(), indexedSoFar()].map((n, i) => n - (counts[i] ?? 0));
    expect(visited).toBeLessThanOrEqual(10);
    expect(made).toBeLessThanOrEqual(10);
    expect(put).toBeLessThanOrEqual(10);
    const were = new Set(before);
    expect(new Set(after.filter((f) => !were.has(f)).map((f) => f.id))).toEqual(
      new Set(['r77-1', 'r77-2', 'r77.0', 'r77.1', 'r77.2']),
    );
    expect(seen.fragments).toEqual(
      after.filter(({ box: b }) => b.minX <= 5000 && b.minY <= 5000 && b.maxX >= 0 && b.maxY >= 0),
    );
  });

  test('the work is the same however many runs there are elsewhere', () => {
    const work = (count: number): number[] => {
      const plan = field(count);
      fragments(plan, PLAN_VIEW, AFTER);
      const before = [visitedSoFar(), madeSoFar()];
      fragments(moved(plan, 'r20.1', 40, 0), PLAN_VIEW, AFTER);
      return [visitedSoFar(), madeSoFar()].map((n, i) => n - (before[i] ?? 0));
    };
    expect(work(2000)).toEqual(work(100));
  });
});
