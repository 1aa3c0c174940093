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

/** The plan with the changes made. Nothing in the plan passed in is touched. */
export function withChanges(plan: Plan, changes: Changes): Plan {
  const nodes = { ...plan.nodes, ...changes.nodes };
  const legs = { ...plan.legs, ...changes.legs };
  for (const id of changes.removedNodes) delete nodes[id];
  for (const id of changes.removedLegs) delete legs[id];
  for (const node of changes.addedNodes) nodes[node.id] = node;
  for (const leg of changes.addedLegs) legs[leg.id] = leg;
  return {
    ...plan,
    nodes,
    legs,
    points: { ...plan.points, ...changes.points },
    stretches: { ...plan.stretches, ...changes.stretches },
    items: { ...plan.items, ...changes.items },
  };
}
