import RBush from 'rbush';
import type { Box, View } from '../../drawing/display-list.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import { type WorkPlane, workPlane } from '../input/work-plane.ts';
import { type Entry, entriesOf } from './entries.ts';

/** Box index of what shows in one view. `visited` counts the records handed out since it was made. */
export interface ViewIndex {
  readonly plane: WorkPlane;
  readonly box: Box | null;
  readonly visited: () => number;
  near(box: Box): readonly Entry[];
}

const kept = new WeakMap<Plan, Map<string, ViewIndex>>();

function build(plan: Plan, view: View, chosen: Case): ViewIndex | undefined {
  const plane = workPlane(plan, view);
  if (!plane) return undefined;
  const entries = [...entriesOf(plan, view, plane, aliveIn(plan, chosen))];
  const tree = new RBush<Entry>().load(entries);
  let visited = 0;
  const box = entries.reduce<Box | null>(
    (all, e) => ({
      minX: Math.min(all?.minX ?? e.minX, e.minX),
      minY: Math.min(all?.minY ?? e.minY, e.minY),
      maxX: Math.max(all?.maxX ?? e.maxX, e.maxX),
      maxY: Math.max(all?.maxY ?? e.maxY, e.maxY),
    }),
    null,
  );
  return {
    plane,
    box,
    visited: () => visited,
    near(around) {
      const found = tree.search(around);
      visited += found.length;
      return found;
    },
  };
}

/** The index of a view, built once for each plan: a plan is never written to, so what was built stays true. */
export function viewIndex(plan: Plan, view: View, chosen: Case): ViewIndex | undefined {
  const views = kept.get(plan) ?? new Map<string, ViewIndex>();
  kept.set(plan, views);
  const looked = view.kind === 'plan' ? view.storey : `${view.wall}/${view.side}`;
  const key = `${view.kind}:${looked}:${chosen.when}:${chosen.option ?? ''}`;
  const found = views.get(key) ?? build(plan, view, chosen);
  if (found) views.set(key, found);
  return found;
}

export const around = ([x, y]: readonly [number, number], by: number): Box => ({
  minX: x - by,
  minY: y - by,
  maxX: x + by,
  maxY: y + by,
});
