import type { NetLink, NetNode } from './hydraulic-net.ts';

/** A link with its ends as places in the list of nodes. */
export interface PlacedLink {
  readonly index: number;
  readonly link: NetLink;
  readonly from: number;
  readonly to: number;
}

/** Nodes and links that hang together, in the order they are met from a held node; `ways[i]` leads to `order[i]` from one met before. */
export interface NetPart {
  readonly order: readonly number[];
  readonly ways: readonly (PlacedLink | null)[];
  readonly links: readonly PlacedLink[];
  readonly held: readonly number[];
}

/** Parts of a net. One walk over all links, from held nodes first. */
export function netParts(nodes: readonly NetNode[], links: readonly PlacedLink[]): NetPart[] {
  const at: PlacedLink[][] = nodes.map(() => []);
  for (const l of links) {
    at[l.from]?.push(l);
    at[l.to]?.push(l);
  }
  const seen = new Set<number>();
  const walk = (start: number): NetPart => {
    const order = [start];
    const ways: (PlacedLink | null)[] = [null];
    const own = new Set<PlacedLink>();
    seen.add(start);
    for (let i = 0; i < order.length; i++) {
      const here = order[i] ?? start;
      for (const l of at[here] ?? []) {
        own.add(l);
        const there = l.from === here ? l.to : l.from;
        if (seen.has(there)) continue;
        seen.add(there);
        order.push(there);
        ways.push(l);
      }
    }
    return { order, ways, links: [...own], held: order.filter((n) => nodes[n]?.headM !== undefined) };
  };
  const first = nodes.flatMap((n, i) => (n.headM === undefined ? [] : [i]));
  const all = [...first, ...nodes.keys()];
  return all.flatMap((n) => (seen.has(n) ? [] : [walk(n)]));
}
