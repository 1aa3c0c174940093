import type { Plan } from '../../plan/plan.ts';
import type { Changes } from './changes.ts';

type Records = Readonly<Record<string, { readonly id: string }>>;

/** A map that reads as `map` with some of it changed, without copying the rest. It cannot be written to. */
function over<M extends Records>(
  map: M,
  set: Records,
  added: readonly { id: string }[],
  removed: readonly string[],
): M {
  const put = new Map<string, unknown>(Object.entries(set));
  for (const record of added) put.set(record.id, record);
  for (const id of removed) put.set(id, undefined);
  if (put.size === 0) return map;
  const read = (id: string): unknown => (put.has(id) ? put.get(id) : map[id]);
  // An empty object stands behind it, as a frozen map would not let anything else be told of its keys.
  return new Proxy({} as M, {
    get: (_, id) => (typeof id === 'string' ? read(id) : undefined),
    has: (_, id) => typeof id === 'string' && read(id) !== undefined,
    set: () => false,
    deleteProperty: () => false,
    ownKeys: () => [...new Set([...Object.keys(map), ...put.keys()])].filter((id) => read(id) !== undefined),
    getOwnPropertyDescriptor: (_, id) =>
      typeof id === 'string' && read(id) !== undefined
        ? { value: read(id), enumerable: true, configurable: true, writable: false }
        : undefined,
  });
}

/**
 * The plan with the changes laid over it, for a moment of a gesture: reads like `withChanges`, costs what changes and not
 * what is drawn. Going through a whole map of it is slow, and it is never kept.
 */
export function laidOver(plan: Plan, changes: Changes): Plan {
  const { addedNodes, addedLegs, removedNodes, removedLegs } = changes;
  return {
    ...plan,
    nodes: over(plan.nodes, changes.nodes, addedNodes, removedNodes),
    legs: over(plan.legs, changes.legs, addedLegs, removedLegs),
    stretches: over(plan.stretches, changes.stretches, [], []),
    points: over(plan.points, changes.points, [], []),
    items: over(plan.items, changes.items, [], []),
  };
}
