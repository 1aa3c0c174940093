import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg, PlanNode, Point } from '../../plan/records/pipework.ts';
import { quantise } from '../../plan/units.ts';
import type { Changes } from './changes.ts';
import type { Collapsed } from './collapse.ts';
import type { Pipework } from './law.ts';
import type { Settled } from './settle.ts';
import { raised } from './told.ts';

const STILL_MM = 1e-6;

/** The node's record for a place. Its height keeps what it is measured from; what did not change keeps its figure. */
function nodeAt(after: Plan, node: PlanNode, place: Xyz): PlanNode {
  if (node.place.on !== 'storey') return node;
  const z = nodePlace(after, node)?.at.z;
  const near = (was: number, is: number): number => (Math.abs(is - was) < STILL_MM ? was : quantise(is));
  const height =
    z === undefined || Math.abs(place.z - z) < STILL_MM ? node.place.height : raised(node.place.height, place.z - z);
  return { ...node, place: { ...node.place, x: near(node.place.x, place.x), y: near(node.place.y, place.y), height } };
}

/** A new node beside another: measured from the same thing, or from the datum beside a connection. */
function addedNode(after: Plan, id: string, beside: PlanNode, place: Xyz, option: string | null): PlanNode {
  const at = beside.place;
  const start: PlanNode['place'] =
    at.on === 'storey'
      ? at
      : {
          on: 'storey',
          storey: after.points[at.point]?.storey ?? '',
          x: 0,
          y: 0,
          height: { from: 'datum', of: null, mm: 0 },
        };
  return nodeAt(after, { id, place: start, turn: null, option }, place);
}

const moved = (was: PlanNode, is: PlanNode): boolean =>
  was.place.on === 'storey' &&
  is.place.on === 'storey' &&
  (was.place.x !== is.place.x || was.place.y !== is.place.y || was.place.height.mm !== is.place.height.mm);

const joins = (was: Leg, is: Leg): boolean => was.a === is.a && was.b === is.b;

/** Places and joints as records, only those that differ. `after` is the plan with its moved points already in it. */
export function writeChanges(
  pipes: Pipework,
  after: Plan,
  settled: Settled,
  left: Collapsed,
  points: ReadonlyMap<string, Point>,
): Changes {
  const { plan } = pipes;
  const nodes: Record<string, PlanNode> = {};
  for (const [id, place] of settled.places) {
    const node = after.nodes[id];
    if (!node || left.removedNodes.has(id)) continue;
    const record = nodeAt(after, node, place);
    if (moved(node, record)) nodes[id] = record;
  }
  const added = new Set(settled.addedLegs);
  const legs: Record<string, Leg> = {};
  for (const [id, leg] of left.legs) {
    const old = plan.legs[id];
    if (old && !joins(old, leg)) legs[id] = leg;
  }
  const option = (node: string): string | null =>
    [...left.legs.values()].find((l) => added.has(l.id) && (l.a === node || l.b === node))?.option ?? null;
  const addedNodes = [...settled.addedNodes].flatMap(([id, besideId]) => {
    const beside = after.nodes[besideId];
    const place = settled.places.get(id);
    return beside && place && !left.removedNodes.has(id) ? [addedNode(after, id, beside, place, option(id))] : [];
  });
  return {
    nodes,
    points: Object.fromEntries(points),
    legs,
    stretches: Object.fromEntries(left.stretches),
    items: Object.fromEntries(left.items),
    addedNodes,
    addedLegs: settled.addedLegs.flatMap((id) => left.legs.get(id) ?? []),
    removedNodes: [...left.removedNodes].filter((id) => id in plan.nodes).sort(),
    removedLegs: [...left.removedLegs].filter((id) => id in plan.legs).sort(),
  };
}
