import type { Case, Plan, RecordMap } from '../plan/plan.ts';
import type { Fate } from '../plan/records/statements.ts';

/** What becomes of a thing in an option: made new, left as it is, taken out, or cut off and capped. */
export type LifeState = 'new' | 'there' | 'strip' | 'cap';

export interface Alive {
  readonly case: Case;
  /** Does it stand in this case? False for ids that are not in the map. */
  has(map: RecordMap, id: string): boolean;
  /** What its option does to it, before and after alike; null where it belongs to another option or is not there. */
  state(id: string): LifeState | null;
}

type Fated = 'walls' | 'openings' | 'voids' | 'points' | 'runs' | 'nodes' | 'legs' | 'stretches' | 'items';
const FATED: readonly Fated[] = ['walls', 'openings', 'voids', 'points', 'runs', 'nodes', 'legs', 'stretches', 'items'];
const isFated = (map: RecordMap): map is Fated => (FATED as readonly string[]).includes(map);

/** Things at each node that could stand in this option at some time: legs and stretches, and items. */
function touching(plan: Plan, possible: (option: string | null) => boolean) {
  const pipes = new Map<string, [map: 'legs' | 'stretches', id: string][]>();
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) {
      if (!possible(pipe.option)) continue;
      for (const node of pipe.a === pipe.b ? [pipe.a] : [pipe.a, pipe.b]) {
        const at = pipes.get(node);
        if (at) at.push([map, pipe.id]);
        else pipes.set(node, [[map, pipe.id]]);
      }
    }
  }
  const items = new Map<string, string[]>();
  for (const item of Object.values(plan.items)) {
    if (!possible(item.option)) continue;
    const at = items.get(item.node);
    if (at) at.push(item.id);
    else items.set(item.node, [item.id]);
  }
  return { pipes, items };
}

/**
 * Which records stand in a case. Surveyed things stand before, and after unless their option strips or caps them; new
 * things stand only after their own option. A leg shares the fate of its run unless it has one itself. An item goes with
 * the pipes at its node, and a node stands while anything live touches it, or where it was placed alone.
 */
export function aliveIn(plan: Plan, chosen: Case): Alive {
  const after = chosen.when === 'after';
  const fates: Readonly<Record<string, Fate>> =
    chosen.option === null ? {} : (plan.options[chosen.option]?.fates ?? {});
  const possible = (option: string | null): boolean => option === null || option === chosen.option;
  // Asked for only by nodes and items: a drawing of pipes alone goes without.
  let found: ReturnType<typeof touching> | undefined;
  const at = (): ReturnType<typeof touching> => {
    found ??= touching(plan, possible);
    return found;
  };

  const stateOf = (map: Fated, id: string): LifeState | null => {
    const thing = plan[map][id];
    if (!thing || !possible(thing.option)) return null;
    if (thing.option !== null) return 'new';
    const over = map === 'legs' ? plan.legs[id]?.run : map === 'stretches' ? plan.stretches[id]?.run : undefined;
    const fate = fates[id] ?? (over === undefined ? undefined : fates[over]) ?? 'keep';
    return fate === 'keep' ? 'there' : fate;
  };
  const stands = (map: Fated, id: string): boolean => {
    const state = stateOf(map, id);
    return state === 'there' || (after ? state === 'new' : state === 'strip' || state === 'cap');
  };
  const pipeAt = (node: string): boolean =>
    at()
      .pipes.get(node)
      ?.some(([map, id]) => stands(map, id)) ?? false;
  const itemStands = (id: string): boolean => {
    const node = plan.items[id]?.node;
    return node !== undefined && stands('items', id) && (pipeAt(node) || !at().pipes.has(node));
  };
  const nodeStands = (id: string): boolean => {
    if (pipeAt(id)) return true;
    const items = at().items.get(id);
    return stands('nodes', id) && (items?.some(itemStands) ?? !at().pipes.has(id));
  };

  return {
    case: chosen,
    has(map, id) {
      if (!isFated(map)) return id in plan[map];
      if (map === 'items') return itemStands(id);
      if (map === 'nodes') return nodeStands(id);
      if (map === 'openings') {
        const wall = plan.openings[id]?.wall;
        return wall !== undefined && stands('walls', wall) && stands('openings', id);
      }
      return stands(map, id);
    },
    state(id) {
      const map = FATED.find((m) => id in plan[m]);
      if (map !== undefined) return stateOf(map, id);
      return null;
    },
  };
}
