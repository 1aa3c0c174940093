import type { Item as PlanItem } from '../../plan/records/pipework.ts';
import type { Fragment, Spread, Vec } from '../display-list.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { outOf } from '../pipes/joints.ts';
import { makeFragment } from './fragment.ts';

/** A thing in line at a node, turned the way its pipe is told, so that what lets flow one way only points along it. */
export function itemFragment(item: PlanItem, vertex: string, leg: DrawnLeg, spread: Spread | undefined): Fragment {
  const at: Vec = leg.vertexA === vertex ? leg.a : leg.b;
  const [x, y] = leg.endOn ? [1, 0] : outOf(leg, leg.vertexA);
  return makeFragment(item.id, 'items', 'item', [
    {
      t: 'mark',
      mark: `item:${item.kind}`,
      at,
      turnDeg: (Math.atan2(y, x) * 180) / Math.PI,
      ink: leg.style.ink,
      ...(spread ? { spread } : {}),
    },
  ]);
}
