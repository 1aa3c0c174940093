import { type Plan, RECORD_MAPS } from '../../plan/plan.ts';

/** One record that was looked at; `id` null: the whole map, because it was gone through. */
interface Read {
  readonly map: keyof Plan;
  readonly id: string | null;
  readonly was: unknown;
}

export interface Traced {
  /** Looks and reads like the plan, and notes every record that is taken from it. */
  readonly plan: Plan;
  readonly reads: readonly Read[];
}

const MAPS: ReadonlySet<string> = new Set(RECORD_MAPS);

function tracedMap(name: keyof Plan, map: Readonly<Record<string, unknown>>, reads: Read[]): unknown {
  const one = (id: string): unknown => {
    const was = Object.hasOwn(map, id) ? map[id] : undefined;
    reads.push({ map: name, id, was });
    return was;
  };
  const all = (): void => {
    reads.push({ map: name, id: null, was: map });
  };
  // An empty object stands behind it: the plan's own maps are frozen, and nothing else may be told of a frozen thing.
  return new Proxy(
    {},
    {
      get: (_, id) => (typeof id === 'string' ? one(id) : undefined),
      has: (_, id) => typeof id === 'string' && one(id) !== undefined,
      ownKeys: () => {
        all();
        return Reflect.ownKeys(map);
      },
      getOwnPropertyDescriptor: (_, id) => {
        if (typeof id !== 'string' || !Object.hasOwn(map, id)) return undefined;
        return { value: one(id), enumerable: true, configurable: true };
      },
    },
  );
}

/** A plan that notes what is read of it, so that a drawing knows what it leans on without saying so twice. */
export function traceReads(plan: Plan): Traced {
  const reads: Read[] = [];
  const maps = new Map<string, unknown>();
  const traced = new Proxy(
    {},
    {
      get(_, name) {
        if (typeof name !== 'string') return undefined;
        const key = name as keyof Plan;
        if (!MAPS.has(name)) {
          reads.push({ map: key, id: null, was: plan[key] });
          return plan[key];
        }
        const known = maps.get(name);
        if (known !== undefined) return known;
        const map = tracedMap(key, plan[key] as Readonly<Record<string, unknown>>, reads);
        maps.set(name, map);
        return map;
      },
    },
  );
  return { plan: traced as Plan, reads };
}

/** Would reading again give the same records? */
export function stillReads(plan: Plan, reads: readonly Read[]): boolean {
  for (const read of reads) {
    const map = plan[read.map];
    const now = read.id === null ? map : (map as Readonly<Record<string, unknown>>)[read.id];
    if (now !== read.was) return false;
  }
  return true;
}
