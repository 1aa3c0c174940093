import { nodePlace } from '../../geometry/places.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Item, Leg } from '../../plan/records/pipework.ts';
import { incidence } from '../displace/incidence.ts';
import { otherNode } from '../displace/law.ts';
import { NotLaid, splitAt } from './edit.ts';

/** A place on a run: one of its nodes, or so far along one of its legs. */
export type OnRun =
  | { readonly at: 'node'; readonly node: string }
  | { readonly at: 'leg'; readonly leg: string; readonly alongMm: number };

/** The part of a run between two places on it. */
export interface LiftedPart {
  /** The plan with a node at both places. */
  readonly plan: Plan;
  readonly from: string;
  readonly to: string;
  /** In order from the first place to the second. */
  readonly legs: readonly Leg[];
  /** Nodes between, in order; places of all, both ends among them. */
  readonly between: readonly string[];
  readonly line: readonly Xyz[];
  /** What stands on the nodes between, and goes with them. */
  readonly items: readonly Item[];
}

function splitBoth(plan: Plan, from: OnRun, to: OnRun, ids: IdMaker): { plan: Plan; from: string; to: string } {
  const put = (on: Plan, place: OnRun): { plan: Plan; node: string } => {
    if (place.at === 'leg') return splitAt(on, place.leg, place.alongMm, ids);
    if (!on.nodes[place.node]) throw new NotLaid('That place is no longer there.');
    return { plan: on, node: place.node };
  };
  // On one leg the further place goes first: its first part keeps the id, and what is measured along it.
  const furtherFirst = from.at === 'leg' && to.at === 'leg' && from.leg === to.leg && from.alongMm > to.alongMm;
  const first = furtherFirst ? put(plan, from) : put(plan, to);
  const second = furtherFirst ? put(first.plan, to) : put(first.plan, from);
  return furtherFirst
    ? { plan: second.plan, from: first.node, to: second.node }
    : { plan: second.plan, from: second.node, to: first.node };
}

/** Legs of one run that lead from a node to another, in order; null where none do. */
function wayAlong(plan: Plan, run: string, from: string, to: string): Leg[] | null {
  const at = incidence(plan);
  const came = new Map<string, Leg | null>([[from, null]]);
  for (const here of came.keys()) {
    if (here === to) break;
    for (const leg of at.legsAt(here)) {
      const next = otherNode(leg, here);
      if (leg.run === run && !came.has(next)) came.set(next, leg);
    }
  }
  const legs: Leg[] = [];
  for (let here = to; here !== from; ) {
    const leg = came.get(here);
    if (!leg) return null;
    legs.unshift(leg);
    here = otherNode(leg, here);
  }
  return legs;
}

function mustBeFree(plan: Plan, node: string, lifted: ReadonlySet<string>): void {
  const at = incidence(plan);
  if (at.stretchesAt(node).length > 0) throw new NotLaid('Pipe nobody can see meets that part. Re-route up to it.');
  if (at.legsAt(node).some((l) => !lifted.has(l.id)))
    throw new NotLaid('A branch leaves that part. Re-route up to it, and on from it.');
  if (plan.nodes[node]?.place.on === 'connection')
    throw new NotLaid('That part goes through a connection. Re-route up to it, and on from it.');
}

/** Finds the part between two places of a run. Throws NotLaid where they are not joined by it, or something else meets it. */
export function liftedPart(plan: Plan, run: string, a: OnRun, b: OnRun, ids: IdMaker): LiftedPart {
  const { plan: split, from, to } = splitBoth(plan, a, b, ids);
  if (from === to) throw new NotLaid('Both places are the same one.');
  const legs = wayAlong(split, run, from, to);
  if (!legs) throw new NotLaid('These two places are not joined by one run. Tap two places of the same run.');
  const lifted = new Set(legs.map((l) => l.id));
  const order = [from];
  for (const leg of legs) order.push(otherNode(leg, order.at(-1) ?? from));
  const between = order.slice(1, -1);
  for (const node of between) mustBeFree(split, node, lifted);
  const line = order.map((id) => {
    const node = split.nodes[id];
    const place = node && nodePlace(split, node)?.at;
    if (!place) throw new NotLaid('A corner of that part has no height yet.');
    return place;
  });
  const at = incidence(split);
  return { plan: split, from, to, legs, between, line, items: between.flatMap((id) => [...at.itemsAt(id)]) };
}
