import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Item } from '../../plan/records/pipework.ts';
import type { Fragment, Spread } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { type DrawnLeg, vertexOf } from '../pipes/drawn-leg.ts';
import { type PipesInView, stateOf } from '../pipes/pipes-in-view.ts';
import { type Plane, viewKey } from '../pipes/plane.ts';
import { spreadKey } from '../pipes/spread-of.ts';
import { itemFragment } from './item.fragment.ts';

/** Things in line by the node they stand at, in the order of the plan. */
export function itemsByNode(plan: Plan): ReadonlyMap<string, readonly Item[]> {
  const found = new Map<string, Item[]>();
  for (const item of Object.values(plan.items)) {
    const there = found.get(item.node);
    if (there) there.push(item);
    else found.set(item.node, [item]);
  }
  return found;
}

/** A thing in line stands with the pipes at its node: asked of the whole plan only where none of them is drawn. */
function standsHere(item: Item, legs: readonly DrawnLeg[], alive: Alive, stripped: boolean): boolean {
  const life = alive.state(item.id);
  const fits = life === 'there' || (alive.case.when === 'after' ? life === 'new' : life === 'strip' || life === 'cap');
  const piped = legs.some((l) => l.state !== 'strip' && (l.record.a === item.node || l.record.b === item.node));
  return (fits && piped) || stateOf(alive, 'items', item.id, stripped) !== null;
}

/** In-line things at nodes whose pipes are drawn. */
export function itemFragments(
  plan: Plan,
  plane: Plane,
  pipes: PipesInView,
  at: ReadonlyMap<string, readonly Item[]>,
  alive: Alive,
  stripped: boolean,
  spreadAt: (vertex: string) => Spread | undefined,
): Fragment[] {
  if (at.size === 0) return [];
  const key = `item:${viewKey(plane.view)}`;
  const nodes = new Set(pipes.legs.flatMap((leg) => [leg.record.a, leg.record.b]));
  return [...nodes].flatMap((id) => {
    const node = plan.nodes[id];
    const items = at.get(id);
    if (!node || !items) return [];
    const vertex = vertexOf(node);
    const legs = pipes.at.get(vertex) ?? [];
    const spread = spreadAt(vertex);
    return items.flatMap((item) => {
      const leg = legs.find((l) => l.record.id === item.along) ?? legs.find((l) => !l.endOn) ?? legs[0];
      if (!leg || !standsHere(item, legs, alive, stripped)) return [];
      return [remember(item, key, plan, [leg, spreadKey(spread)], () => itemFragment(item, vertex, leg, spread))];
    });
  });
}
