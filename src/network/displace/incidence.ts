import type { Plan } from '../../plan/plan.ts';
import type { Item, Leg, PlanNode, Stretch } from '../../plan/records/pipework.ts';

/** What hangs on a node or a point, so that a move looks only at what it touches. */
export interface Incidence {
  legsAt(node: string): readonly Leg[];
  stretchesAt(node: string): readonly Stretch[];
  itemsAt(node: string): readonly Item[];
  /** Nodes on the connections of a point. */
  nodesOn(point: string): readonly PlanNode[];
  /** Free nodes whose height is taken from a connection of the point. */
  leaningOn(point: string): readonly PlanNode[];
  /** Points whose height is taken from a connection of the point. */
  pointsLeaningOn(point: string): readonly string[];
}

type Maps = Pick<Plan, 'nodes' | 'legs' | 'stretches' | 'items' | 'points'>;
const known = new WeakMap<Plan['nodes'], { maps: Maps; incidence: Incidence }>();

function put<T>(map: Map<string, T[]>, key: string, entry: T): void {
  const list = map.get(key);
  if (list) list.push(entry);
  else map.set(key, [entry]);
}

function build({ nodes, legs, stretches, items, points }: Maps): Incidence {
  const legsAt = new Map<string, Leg[]>();
  const stretchesAt = new Map<string, Stretch[]>();
  const itemsAt = new Map<string, Item[]>();
  const nodesOn = new Map<string, PlanNode[]>();
  const leaningOn = new Map<string, PlanNode[]>();
  for (const leg of Object.values(legs)) for (const n of new Set([leg.a, leg.b])) put(legsAt, n, leg);
  for (const s of Object.values(stretches)) for (const n of new Set([s.a, s.b])) put(stretchesAt, n, s);
  for (const item of Object.values(items)) put(itemsAt, item.node, item);
  for (const node of Object.values(nodes)) {
    if (node.place.on === 'connection') put(nodesOn, node.place.point, node);
    else if (node.place.height.from === 'connection' && node.place.height.of !== null) {
      put(leaningOn, node.place.height.of, node);
    }
  }
  const pointsLeaningOn = new Map<string, string[]>();
  for (const { id, place } of Object.values(points)) {
    if (place.height.from === 'connection' && place.height.of !== null) put(pointsLeaningOn, place.height.of, id);
  }
  return {
    legsAt: (id) => legsAt.get(id) ?? [],
    stretchesAt: (id) => stretchesAt.get(id) ?? [],
    itemsAt: (id) => itemsAt.get(id) ?? [],
    nodesOn: (id) => nodesOn.get(id) ?? [],
    leaningOn: (id) => leaningOn.get(id) ?? [],
    pointsLeaningOn: (id) => pointsLeaningOn.get(id) ?? [],
  };
}

/** Built once for as long as the records stay the same, as they do through a gesture. */
export function incidence(plan: Plan): Incidence {
  const { nodes, legs, stretches, items, points } = plan;
  const found = known.get(nodes);
  const same = (maps: Maps): boolean =>
    maps.legs === legs && maps.stretches === stretches && maps.items === items && maps.points === points;
  if (found && same(found.maps)) return found.incidence;
  const made = build(plan);
  known.set(nodes, { maps: { nodes, legs, stretches, items, points }, incidence: made });
  return made;
}
