import { resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { withChanges } from '../displace/changes.ts';
import { displace } from '../displace/displace.ts';
import { incidence } from '../displace/incidence.ts';
import { otherNode } from '../displace/law.ts';
import {
  alongPlaced,
  changedIds,
  type Laid,
  type LayOptions,
  laid,
  NotLaid,
  type PlacedLeg,
  placedLeg,
  withNeighbours,
} from './edit.ts';
import { isDrain, isUpright, lowerEnd } from './falls.ts';
import { HELD, shift, wentWhole } from './shift.ts';

export interface Drop {
  readonly leg: string;
  /** Where it drops or rises, from end a. */
  readonly alongMm: number;
  /** The end whose side goes to the height. */
  readonly toward: 'a' | 'b';
  readonly height: HeightRef;
}

const zOf = (plan: Plan, id: string): number | undefined => {
  const node = plan.nodes[id];
  return node && nodePlace(plan, node)?.at.z;
};

/** The upright that already stands at a corner and has nothing else on it: it grows or shrinks in place of a new one. */
function uprightAt(plan: Plan, node: string, leg: string): boolean {
  const at = incidence(plan);
  const [other, more] = at.legsAt(node).filter((l) => l.id !== leg);
  if (!other || more || at.stretchesAt(node).length > 0 || plan.nodes[node]?.place.on !== 'storey') return false;
  const there = placedLeg(plan, other.id);
  return isUpright(there.a, there.b);
}

/** Everything the level pipe from a node on joins to it: it shares the height that was told. */
function levelFrom(plan: Plan, start: string): Set<string> {
  const z = zOf(plan, start);
  const at = incidence(plan);
  const found = new Set([start]);
  for (const here of found) {
    for (const leg of at.legsAt(here)) {
      const other = otherNode(leg, here);
      const its = zOf(plan, other);
      if (z !== undefined && its !== undefined && Math.abs(its - z) < COINCIDENT_MM) found.add(other);
    }
  }
  return found;
}

/** The height stays told from what it was told from: a ceiling that is measured again takes the pipe along. */
function retold(plan: Plan, from: string, height: HeightRef, z: number): Plan {
  const nodes = { ...plan.nodes };
  for (const id of levelFrom(plan, from)) {
    const node = nodes[id];
    const its = zOf(plan, id);
    if (node?.place.on !== 'storey' || its === undefined || Math.abs(its - z) >= COINCIDENT_MM) continue;
    nodes[id] = { ...node, place: { ...node.place, height: { ...height } } };
  }
  return { ...plan, nodes };
}

function mustFall(placed: PlacedLeg, toward: 'a' | 'b', by: number): void {
  const falls = toward === lowerEnd(placed) ? by < 0 : by > 0;
  if (!falls) throw new NotLaid('Water would stand before it: this pipe runs downhill, and it would climb there.');
}

function dropped(plan: Plan, drop: Drop, options: LayOptions): Plan {
  const placed = placedLeg(plan, drop.leg);
  const { leg, a, b, lengthMm } = placed;
  const { toward } = drop;
  if (isUpright(a, b)) throw new NotLaid('That leg stands upright already. Set the height of its corner.');
  const z = resolveHeight(plan, drop.height)?.z;
  if (z === undefined) throw new NotLaid('That height is told from something that has none itself.');
  const along = Math.min(Math.max(drop.alongMm, 0), lengthMm);
  const here = alongPlaced(placed, along);
  const by: Xyz = { x: 0, y: 0, z: z - here.z };
  if (Math.abs(by.z) <= COINCIDENT_MM) throw new NotLaid('The pipe is at that height there already.');
  if (isDrain(plan, leg, options.runsDownhill)) mustFall(placed, toward, by.z);
  const left = distance3(here, toward === 'b' ? b : a);
  if (left <= COINCIDENT_MM) throw new NotLaid('Nothing of the pipe is left beyond that place.');
  const corner = toward === 'b' ? leg.a : leg.b;
  if (distance3(here, toward === 'b' ? a : b) <= COINCIDENT_MM && uprightAt(plan, corner, leg.id)) {
    const answer = displace(plan, [{ leg: leg.id, by }], { ids: options.ids, runsDownhill: options.runsDownhill });
    if (!answer.ok) throw new NotLaid(answer.why);
    const after = withChanges(plan, answer.changes);
    if (!wentWhole(plan, after, toward === 'b' ? leg.b : leg.a, by)) throw new NotLaid(HELD);
    return after.nodes[corner] ? retold(after, corner, drop.height, z) : after;
  }
  const { plan: after, far } = shift(plan, placed, { toward, stays: here, goes: { ...here, z }, by }, options);
  return retold(after, far, drop.height, z);
}

/**
 * The pipe goes up or down at a place along a leg, or at its corner, and on from there at a told height, as far as it runs
 * level. What is beyond follows as in any move. Nothing is written to the plan that is given.
 */
export function layDrop(plan: Plan, drop: Drop, options: LayOptions): Laid {
  return laid(() => {
    const next = dropped(plan, drop, options);
    return { plan: next, touched: withNeighbours(plan, changedIds(plan, next)) };
  });
}
