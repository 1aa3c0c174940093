import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Selected } from '../editor-api.ts';
import type { ThingMove } from '../moving/moved-plan.ts';

/** What has to be told to move so that the chosen things go all the same way. Tails go only with their points. */
export function movesOf(plan: Plan, things: readonly Selected[], by: Xyz): ThingMove[] {
  const nodes = new Set<string>();
  const moves: ThingMove[] = [];
  for (const { map, id } of things) {
    if (map === 'walls') moves.push({ wall: id, by: { x: by.x, y: by.y } });
    else if (map === 'points') moves.push({ point: id, by });
    else if (map === 'nodes') nodes.add(id);
    else if (map === 'items') nodes.add(plan.items[id]?.node ?? '');
    else if (map === 'legs' && things.length === 1) moves.push({ leg: id, by });
    else if (map === 'legs' || map === 'runs') {
      for (const leg of Object.values(plan.legs)) {
        if (leg.id === id || leg.run === id) nodes.add(leg.a).add(leg.b);
      }
    }
  }
  for (const node of nodes) if (plan.nodes[node]?.place.on === 'storey') moves.push({ node, by });
  return moves;
}
