import { nodePlace } from '../../geometry/places.ts';
import { distance3, dot3, length3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Incidence } from './incidence.ts';
import { otherNode } from './law.ts';

/**
 * The way of pipe that was there and goes straight through a node with nothing of its own standing in it: new pipe that
 * comes off there can come off further along without any old pipe being moved. Undefined anywhere else.
 */
export function oldThrough(plan: Plan, at: Incidence, node: string): Xyz | undefined {
  const here = plan.nodes[node] && nodePlace(plan, plan.nodes[node])?.at;
  const old = at.legsAt(node).filter((l) => l.option === null);
  const [one, other] = old;
  if (!here || !one || !other || old.length !== 2 || at.stretchesAt(node).length > 0) return undefined;
  if (one.tube.kind !== other.tube.kind || one.tube.size !== other.tube.size) return undefined;
  if (at.itemsAt(node).some((i) => i.option === null)) return undefined;
  const [u, w] = [one, other].map((leg) => {
    const end = plan.nodes[otherNode(leg, node)];
    const place = end && nodePlace(plan, end)?.at;
    return place && distance3(place, here) > COINCIDENT_MM ? sub3(place, here) : undefined;
  });
  if (!u || !w) return undefined;
  const way = unit3(u);
  const along = dot3(w, way);
  const aside = Math.sqrt(Math.max(0, length3(w) ** 2 - along ** 2));
  return along < 0 && aside <= COINCIDENT_MM ? way : undefined;
}

/** Does a move go along a way and nowhere else? */
export function isAlong(by: Xyz, way: Xyz): boolean {
  const along = dot3(by, way);
  return Math.sqrt(Math.max(0, length3(by) ** 2 - along ** 2)) <= COINCIDENT_MM;
}
