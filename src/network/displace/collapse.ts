import { distance3 } from '../../geometry/vec.ts';
import type { Item, Leg, Stretch } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { Refusal } from './changes.ts';
import type { Pipework } from './law.ts';
import { sayRun } from './say.ts';
import { placeNow, type Settled } from './settle.ts';

/** What is left once legs of no length are gone and their two nodes are one. */
export interface Collapsed {
  readonly legs: ReadonlyMap<string, Leg>;
  readonly stretches: ReadonlyMap<string, Stretch>;
  readonly items: ReadonlyMap<string, Item>;
  readonly removedLegs: ReadonlySet<string>;
  readonly removedNodes: ReadonlySet<string>;
}

/** Takes away touched legs that have no length any more; what hung on the one node then hangs on the other. */
export function collapse(pipes: Pipework, settled: Settled, stays: (node: string) => boolean): Collapsed {
  const { plan, at } = pipes;
  const legs = new Map(settled.legs);
  const removedLegs = new Set<string>();
  const into = new Map<string, string>();
  const now = (node: string): string => {
    let at = node;
    for (let next = into.get(at); next !== undefined; next = into.get(at)) at = next;
    return at;
  };
  const onConnection = (node: string): boolean => plan.nodes[node]?.place.on === 'connection';
  // The node that is held, or has most on it, is the one to keep.
  const weight = (node: string): number =>
    (onConnection(node) ? 2000 : 0) + (stays(node) ? 1000 : 0) + (plan.nodes[node] ? 100 : 0) + at.legsAt(node).length;
  for (const leg of [...settled.legs.values()].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const [a, b] = [now(leg.a), now(leg.b)];
    const [pa, pb] = [placeNow(pipes, settled, a), placeNow(pipes, settled, b)];
    if (a !== b && (!pa || !pb || distance3(pa, pb) > COINCIDENT_MM)) continue;
    removedLegs.add(leg.id);
    legs.delete(leg.id);
    if (a === b) continue;
    if (onConnection(a) && onConnection(b)) {
      throw new Refusal(`${sayRun(plan, leg.run)} cannot follow: nothing would be left of it between its two ends.`);
    }
    const [keep, drop] = weight(a) >= weight(b) ? [a, b] : [b, a];
    into.set(drop, keep);
  }
  const stretches = new Map<string, Stretch>();
  const items = new Map<string, Item>();
  for (const dropped of into.keys()) {
    for (const leg of at.legsAt(dropped)) if (!removedLegs.has(leg.id) && !legs.has(leg.id)) legs.set(leg.id, leg);
    for (const s of at.stretchesAt(dropped)) stretches.set(s.id, { ...s, a: now(s.a), b: now(s.b) });
    for (const item of at.itemsAt(dropped)) items.set(item.id, { ...item, node: now(item.node) });
  }
  for (const [id, leg] of legs) legs.set(id, { ...leg, a: now(leg.a), b: now(leg.b) });
  for (const [id, leg] of settled.along) {
    const item = items.get(id) ?? plan.items[id];
    if (item) items.set(id, { ...item, along: leg });
  }
  for (const id of removedLegs) {
    const leg = settled.legs.get(id);
    for (const node of leg ? [leg.a, leg.b] : []) {
      for (const old of at.itemsAt(node)) {
        const item = items.get(old.id) ?? old;
        if (item.along === id) items.set(item.id, { ...item, along: null });
      }
    }
  }
  return { legs, stretches, items, removedLegs, removedNodes: new Set(into.keys()) };
}
