/** Places water or air stands at, with the heights of them, and what lets it out. */
export interface Levels {
  /** Height of each place, mm; turned round to look for dips. */
  readonly height: ReadonlyMap<string, number>;
  readonly links: readonly (readonly [string, string])[];
  /** Where it gets out, whatever the height. */
  readonly outlets: ReadonlySet<string>;
}

export interface Pocket {
  /** The highest place of it. */
  readonly top: string;
  readonly topMm: number;
  /** Height of the lip it would have to get under. */
  readonly lipMm: number;
  /** Every place above the lip. */
  readonly places: readonly string[];
  /** Its lip leads to a way out. Otherwise it leads into a higher pocket, whose places take these in. */
  readonly last: boolean;
}

interface Pool {
  top: string;
  topMm: number;
  places: string[];
  out: boolean;
}

/**
 * Highs that hold air: each stretch of pipe that has to be left downwards to get to a way out. Places are taken from the
 * top; where two pools meet, the lower one ends at that lip. What has no way out at all is its own pocket down to its
 * lowest place. With the heights turned round the same finds what holds water. Sorting apart, linear.
 */
export function pocketsOf({ height, links, outlets }: Levels): Pocket[] {
  const beside = new Map<string, string[]>();
  for (const [a, b] of links) {
    if (!height.has(a) || !height.has(b)) continue;
    beside.set(a, [...(beside.get(a) ?? []), b]);
    beside.set(b, [...(beside.get(b) ?? []), a]);
  }
  const up = new Map<string, string>();
  const pools = new Map<string, Pool>();
  const rootOf = (id: string): string => {
    let at = id;
    for (let next = up.get(at); next !== undefined && next !== at; next = up.get(at)) {
      up.set(at, up.get(next) ?? next);
      at = next;
    }
    return at;
  };
  const found: Pocket[] = [];
  const end = (pool: Pool, lipMm: number, last: boolean): void => {
    if (pool.topMm > lipMm) found.push({ top: pool.top, topMm: pool.topMm, lipMm, places: [...pool.places], last });
  };
  const join = (one: string, other: string, lipMm: number): void => {
    const [a, b] = [rootOf(one), rootOf(other)];
    const [pa, pb] = [pools.get(a), pools.get(b)];
    if (a === b || !pa || !pb) return;
    const keepsA = pa.out !== pb.out ? pa.out : pa.topMm >= pb.topMm;
    const [kept, gone, keep, go] = keepsA ? [pa, pb, a, b] : [pb, pa, b, a];
    if (!gone.out) end(gone, lipMm, kept.out);
    // Places are copied from the smaller pool to the larger, so that each is copied a few times at most.
    const [small, large] = gone.places.length > kept.places.length ? [kept, gone] : [gone, kept];
    for (const p of small.places) large.places.push(p);
    kept.places = large.places;
    up.set(go, keep);
    pools.delete(go);
  };
  const order = [...height].sort(([a, ha], [b, hb]) => hb - ha || (a < b ? -1 : 1));
  for (const [id, mm] of order) {
    up.set(id, id);
    pools.set(id, { top: id, topMm: mm, places: [id], out: outlets.has(id) });
    for (const other of beside.get(id) ?? []) if (up.has(other)) join(other, id, mm);
  }
  for (const pool of pools.values()) {
    if (pool.out) continue;
    const lowest = Math.min(...pool.places.map((p) => height.get(p) ?? pool.topMm));
    found.push({ top: pool.top, topMm: pool.topMm, lipMm: lowest, places: pool.places, last: true });
  }
  return found;
}
