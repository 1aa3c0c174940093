import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Item, Leg, PlanNode, Point, Stretch } from '../../plan/records/pipework.ts';

/** What is to be moved, by how many mm. A node may be told where to go instead. */
export type Move =
  | { readonly node: string; readonly by: Xyz }
  | { readonly node: string; readonly to: Xyz }
  | { readonly leg: string; readonly by: Xyz }
  | { readonly point: string; readonly by: Xyz }
  | { readonly point: string; readonly connection: string; readonly by: Xyz };

/** Records as they are to be; everything not named stays as it is. */
export interface Changes {
  readonly nodes: Readonly<Record<string, PlanNode>>;
  readonly points: Readonly<Record<string, Point>>;
  readonly legs: Readonly<Record<string, Leg>>;
  readonly stretches: Readonly<Record<string, Stretch>>;
  readonly items: Readonly<Record<string, Item>>;
  readonly addedNodes: readonly PlanNode[];
  readonly addedLegs: readonly Leg[];
  readonly removedNodes: readonly string[];
  readonly removedLegs: readonly string[];
}

/** The changes, or why not, in a sentence that names the run or the point. */
export type Displaced = { readonly ok: true; readonly changes: Changes } | { readonly ok: false; readonly why: string };

/** Thrown inside displace() and turned into its answer there. */
export class Refusal extends Error {}

interface MapChange<T> {
  readonly set: Readonly<Record<string, T>>;
  readonly added: readonly (T & { readonly id: string })[];
  readonly removed: readonly string[];
}

/** A map with some of it changed; the same one where nothing is, since copying a large one costs most of a move. */
function changed<T>(map: Readonly<Record<string, T>>, { set, added, removed }: MapChange<T>): Record<string, T> {
  if (Object.keys(set).length === 0 && added.length === 0 && removed.length === 0) return map;
  const copy = { ...map, ...set };
  for (const id of removed) delete copy[id];
  for (const record of added) copy[record.id] = record;
  return copy;
}

const only = <T>(set: Readonly<Record<string, T>>): MapChange<T> => ({ set, added: [], removed: [] });

/** The plan with the changes made. Nothing in the plan passed in is touched. */
export function withChanges(plan: Plan, changes: Changes): Plan {
  const { addedNodes, addedLegs, removedNodes, removedLegs } = changes;
  return {
    ...plan,
    nodes: changed(plan.nodes, { set: changes.nodes, added: addedNodes, removed: removedNodes }),
    legs: changed(plan.legs, { set: changes.legs, added: addedLegs, removed: removedLegs }),
    points: changed(plan.points, only(changes.points)),
    stretches: changed(plan.stretches, only(changes.stretches)),
    items: changed(plan.items, only(changes.items)),
  };
}
