import { photoPlace } from '../../geometry/photo-place.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Selected } from '../editor-api.ts';
import type { WorkPlane } from '../input/work-plane.ts';
import type { Handle } from './hit-test.ts';
import { voidHandles } from './void-parts.ts';

function runNodes(plan: Plan, run: string): Set<string> {
  const nodes = new Set<string>();
  for (const leg of Object.values(plan.legs)) if (leg.run === run) nodes.add(leg.a).add(leg.b);
  return nodes;
}

/** The rings that show on what is chosen: both ends of a wall, the corners of a run or leg. */
export function handlesOf(plan: Plan, plane: WorkPlane, chosen: readonly Selected[]): Handle[] {
  return chosen.flatMap(({ map, id }): Handle[] => {
    const wall = map === 'walls' && plane.kind === 'plan' ? plan.walls[id] : undefined;
    if (wall) return (['a', 'b'] as const).map((end) => ({ map, id, end, at: plane.onto({ ...wall[end], z: 0 }) }));
    if (map === 'voids') return voidHandles(plan, plane, id);
    const photo = map === 'blobRefs' && plane.kind === 'plan' ? plan.blobRefs[id] : undefined;
    const taken = photo && photoPlace(plan, photo);
    if (taken) return [{ map, id, at: plane.onto({ ...taken.at, z: 0 }) }];
    const leg = map === 'legs' ? plan.legs[id] : undefined;
    const ids = map === 'runs' ? runNodes(plan, id) : leg ? [leg.a, leg.b] : [];
    return [...ids].flatMap((node): Handle[] => {
      const record = plan.nodes[node];
      const place = record?.place.on === 'storey' ? nodePlace(plan, record) : undefined;
      return place ? [{ map: 'nodes', id: node, at: plane.onto(place.at) }] : [];
    });
  });
}
