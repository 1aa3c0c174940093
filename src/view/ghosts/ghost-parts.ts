import type { View } from '../../drawing/display-list.ts';
import { fragments } from '../../drawing/fragments.ts';
import { type GhostPart, ghostsOf } from '../../drawing/ghost/ghost.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import { type Ghosts, nextFloor, otherShown } from './ghosts.ts';

function floorGhosts(plan: Plan, view: View, chosen: Case, way: 'below' | 'above'): readonly GhostPart[] {
  if (view.kind !== 'plan') return [];
  const floor = nextFloor(plan, view.storey, way);
  return floor ? ghostsOf(fragments(plan, { ...view, storey: floor.id }, chosen, { stripped: false })) : [];
}

/** What the other case has and the one that is looked at has not. */
function caseGhosts(plan: Plan, view: View, chosen: Case, other: Case): readonly GhostPart[] {
  if (view.kind !== 'plan' && view.kind !== 'face') return [];
  const here = fragments(plan, view, chosen, { stripped: other.when !== 'before' });
  return ghostsOf(fragments(plan, view, other, { stripped: false }), here);
}

/** Everything that lies faint under a view, the lowest first. A face shows the other case only: it has no floor below. */
export function ghostParts(plan: Plan, view: View, chosen: Case, shown: Ghosts): readonly GhostPart[] {
  const other = otherShown(plan, chosen, shown);
  return [
    ...(shown.below ? floorGhosts(plan, view, chosen, 'below') : []),
    ...(shown.above ? floorGhosts(plan, view, chosen, 'above') : []),
    ...(other ? caseGhosts(plan, view, chosen, other) : []),
  ];
}
