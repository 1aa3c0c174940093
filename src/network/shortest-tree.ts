import { type Chain, reversed, weight } from './chains.ts';
import { Heap } from './heap.ts';

/** A chain of the tree, told away from the root, and the one before it. */
export interface Branch {
  readonly chain: Chain;
  readonly parent: Branch | null;
}

export interface Tree {
  /** Parents before what hangs on them. */
  readonly branches: readonly Branch[];
  /** By the vertex it leads to. */
  readonly to: ReadonlyMap<string, Branch>;
  /** Chains that close a ring, told from the end nearer to the root. */
  readonly closing: readonly Branch[];
}

/** Shortest ways from a root along chains. Of two ways as long as each other, the one with the lower first id is taken. */
export function shortestTree(root: string, chains: readonly Chain[]): Tree {
  const at = new Map<string, Chain[]>();
  for (const chain of chains) {
    for (const way of [chain, reversed(chain)]) {
      const list = at.get(way.from);
      if (list) list.push(way);
      else at.set(way.from, [way]);
    }
  }
  const distance = new Map<string, number>([[root, 0]]);
  const to = new Map<string, Branch>();
  const branches: Branch[] = [];
  const settled = new Set<string>();
  const used = new Set<string>();
  const firstId = (chain: Chain): string => chain.edges[0]?.id ?? '';
  const queue = new Heap<readonly [far: number, vertex: string]>(([d, v], [e, w]) => d < e || (d === e && v < w));
  queue.push([0, root]);
  for (let here = queue.pop(); here !== undefined; here = queue.pop()) {
    const [far, vertex] = here;
    if (settled.has(vertex)) continue;
    settled.add(vertex);
    const branch = to.get(vertex);
    if (branch) {
      branches.push(branch);
      for (const edge of branch.chain.edges) used.add(edge.id);
    }
    for (const chain of [...(at.get(vertex) ?? [])].sort((a, b) => (firstId(a) < firstId(b) ? -1 : 1))) {
      if (settled.has(chain.to)) continue;
      const reached = far + weight(chain);
      if (reached >= (distance.get(chain.to) ?? Number.POSITIVE_INFINITY)) continue;
      distance.set(chain.to, reached);
      queue.push([reached, chain.to]);
      to.set(chain.to, { chain, parent: branch ?? null });
    }
  }
  const closing = chains
    .filter((c) => c.edges.some((e) => !used.has(e.id)))
    .map((c) => ((distance.get(c.to) ?? 0) < (distance.get(c.from) ?? 0) ? reversed(c) : c))
    .map((chain) => ({ chain, parent: to.get(chain.from) ?? null }));
  return { branches, to, closing };
}

/** Branches from the root to a vertex, in that order. */
export function wayTo(tree: Tree, vertex: string): Branch[] {
  const way: Branch[] = [];
  for (let b = tree.to.get(vertex) ?? null; b !== null; b = b.parent) way.push(b);
  return way.reverse();
}
