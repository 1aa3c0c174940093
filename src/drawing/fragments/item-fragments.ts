import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Fragment, Spread } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { vertexOf } from '../pipes/drawn-leg.ts';
import { type PipesInView, stateOf } from '../pipes/pipes-in-view.ts';
import { type Plane, viewKey } from '../pipes/plane.ts';
import { spreadKey } from '../pipes/spread-of.ts';
import { itemFragment } from './item.fragment.ts';

/** In-line things at nodes whose pipes are drawn. */
export function itemFragments(
  plan: Plan,
  plane: Plane,
  pipes: PipesInView,
  alive: Alive,
  stripped: boolean,
  spreadAt: (vertex: string) => Spread | undefined,
): Fragment[] {
  const key = `item:${viewKey(plane.view)}`;
  return Object.values(plan.items).flatMap((item) => {
    const node = plan.nodes[item.node];
    if (!node || stateOf(alive, 'items', item.id, stripped) === null) return [];
    const vertex = vertexOf(node);
    const legs = pipes.at.get(vertex) ?? [];
    const leg = legs.find((l) => l.record.id === item.along) ?? legs.find((l) => !l.endOn) ?? legs[0];
    const spread = spreadAt(vertex);
    const leansOn = [leg, spreadKey(spread)];
    return leg ? [remember(item, key, plan, leansOn, () => itemFragment(item, vertex, leg, spread))] : [];
  });
}
