import RBush from 'rbush';
import type { Box } from '../display-list.ts';
import type { DrawnLeg } from './drawn-leg.ts';
import { meeting, type PipesInView } from './pipes-in-view.ts';

/** Pipes further apart than this have nothing to say of one another: no bank, no crossing, no mark in the way. */
const APART_MM = 200;

/** More at once are put in the index faster together. */
const MANY = 200;

/** Pipes that touch or lie near one another, and so are drawn together. */
export type Cluster = PipesInView;

let visited = 0;

/** How many pipes were looked at since the start to put clusters together: for tests that count. */
export const visitedSoFar = (): number => visited;

interface Entry extends Box {
  readonly leg: DrawnLeg;
}

const entryOf = (leg: DrawnLeg): Entry => ({
  minX: Math.min(leg.a[0], leg.b[0]),
  minY: Math.min(leg.a[1], leg.b[1]),
  maxX: Math.max(leg.a[0], leg.b[0]),
  maxY: Math.max(leg.a[1], leg.b[1]),
  leg,
});

const wide = ({ minX, minY, maxX, maxY }: Box, by: number): Box => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

/**
 * The drawn pipes of a view in their clusters. When some change, only the clusters they leave, and those they come near,
 * are taken apart and put together again; the others stay the very same objects.
 */
export class Clusters {
  readonly #tree = new RBush<Entry>();
  readonly #entries = new Map<string, Entry>();
  readonly #in = new Map<string, Cluster>();
  readonly #all = new Set<Cluster>();

  all(): Iterable<Cluster> {
    return this.#all;
  }

  of(id: string): Cluster | undefined {
    return this.#in.get(id);
  }

  /** Drawn pipes that come near a box of the plane. */
  near(box: Box, reachMm = 0): DrawnLeg[] {
    return this.#tree.search(wide(box, reachMm)).map((e) => e.leg);
  }

  /** `legs`: by id, how a pipe is drawn now; null where it is not. `ranks`: the order of drawing. */
  change(legs: ReadonlyMap<string, DrawnLeg | null>, ranks: ReadonlyMap<string, number>): void {
    const loose = new Set<DrawnLeg>();
    const open = (cluster: Cluster | undefined): void => {
      if (!cluster || !this.#all.delete(cluster)) return;
      for (const leg of cluster.legs) {
        this.#in.delete(leg.record.id);
        loose.add(leg);
      }
    };
    const put: Entry[] = [];
    for (const [id, leg] of legs) {
      open(this.#in.get(id));
      const old = this.#entries.get(id);
      if (old) {
        this.#tree.remove(old);
        this.#entries.delete(id);
        loose.delete(old.leg);
      }
      if (leg) put.push(entryOf(leg));
    }
    for (const entry of put) {
      this.#entries.set(entry.leg.record.id, entry);
      loose.add(entry.leg);
    }
    if (put.length > MANY) this.#tree.load(put);
    else for (const entry of put) this.#tree.insert(entry);
    for (const entry of put) {
      for (const near of this.#tree.search(wide(entry, APART_MM))) open(this.#in.get(near.leg.record.id));
    }
    this.#join(loose, ranks);
  }

  #join(loose: ReadonlySet<DrawnLeg>, ranks: ReadonlyMap<string, number>): void {
    visited += loose.size;
    const left = new Set(loose);
    const byVertex = new Map<string, DrawnLeg[]>();
    for (const leg of loose) {
      for (const vertex of [leg.vertexA, leg.vertexB]) {
        const there = byVertex.get(vertex);
        if (there) there.push(leg);
        else byVertex.set(vertex, [leg]);
      }
    }
    const rank = (leg: DrawnLeg): number => ranks.get(leg.record.id) ?? 0;
    for (const first of loose) {
      if (!left.delete(first)) continue;
      const found = [first];
      const take = (leg: DrawnLeg): void => {
        if (left.delete(leg)) found.push(leg);
      };
      for (let i = 0; i < found.length; i++) {
        const leg = found[i] as DrawnLeg;
        for (const vertex of [leg.vertexA, leg.vertexB]) byVertex.get(vertex)?.forEach(take);
        const entry = this.#entries.get(leg.record.id);
        if (entry) for (const near of this.#tree.search(wide(entry, APART_MM))) take(near.leg);
      }
      found.sort((p, q) => rank(p) - rank(q));
      const cluster: Cluster = meeting(found);
      this.#all.add(cluster);
      for (const leg of found) this.#in.set(leg.record.id, cluster);
    }
  }
}
