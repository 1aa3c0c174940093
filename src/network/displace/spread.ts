import type { AxisIndex } from './frame.ts';
import { type LegLaw, otherNode, type Pipework } from './law.ts';

/** Nodes that keep one figure along an axis, because no leg between them can take up a move that way. */
export interface Together {
  readonly nodes: ReadonlySet<string>;
  readonly links: readonly LegLaw[];
}

export type Stays = (node: string) => boolean;

export interface Spread {
  readonly pipes: Pipework;
  readonly axis: AxisIndex;
  /** Nodes that stay, and past which nothing goes along. */
  readonly stays: Stays;
  /** Legs told to take up a move although they slant. */
  readonly loose: ReadonlySet<string>;
}

export function linksAt({ pipes, axis, loose }: Spread, node: string): LegLaw[] {
  return pipes.at.legsAt(node).flatMap((leg) => {
    const law = pipes.law(leg);
    return law && law.axis !== axis && !loose.has(leg.id) && leg.a !== leg.b ? [law] : [];
  });
}

/** Everything that goes along with a node on one axis, up to the nodes that stop it. */
export function together(spread: Spread, start: string): Together {
  const nodes = new Set([start]);
  const links = new Map<string, LegLaw>();
  for (const node of nodes) {
    if (node !== start && spread.stays(node)) continue;
    for (const law of linksAt(spread, node)) {
      links.set(law.leg.id, law);
      nodes.add(otherNode(law.leg, node));
    }
  }
  return { nodes, links: [...links.values()] };
}

type LinksAt = ReadonlyMap<string, readonly LegLaw[]>;

function byNode(links: readonly LegLaw[]): LinksAt {
  const at = new Map<string, LegLaw[]>();
  for (const law of links) {
    for (const n of [law.leg.a, law.leg.b]) {
      const list = at.get(n);
      if (list) list.push(law);
      else at.set(n, [law]);
    }
  }
  return at;
}

/** Nodes reached from some, each with the link it was reached by; nothing is reached through a stop. */
function reached(at: LinksAt, from: readonly string[], stays: Stays, without?: LegLaw): Map<string, LegLaw | null> {
  const nodes = new Map<string, LegLaw | null>(from.map((n) => [n, null]));
  for (const [node, by] of nodes) {
    if (by !== null && stays(node)) continue;
    for (const law of at.get(node) ?? []) {
      const other = otherNode(law.leg, node);
      if (law !== without && !nodes.has(other)) nodes.set(other, law);
    }
  }
  return nodes;
}

export interface Cut {
  readonly law: LegLaw;
  /** Nodes on the side of the first group. */
  readonly side: ReadonlySet<string>;
}

/** Legs which, taken away, part the one group from the other; nearest to the first group first. */
export function cutsBetween(
  { links }: Together,
  one: readonly string[],
  other: readonly string[],
  stays: Stays,
): Cut[] {
  const at = byNode(links);
  const way = reached(at, one, stays);
  const cuts: Cut[] = [];
  let node = other.find((n) => way.has(n));
  // Only a leg on the way from the one to the other can part them.
  for (let law = node === undefined ? null : way.get(node); law && node !== undefined; law = way.get(node)) {
    const side = reached(at, one, stays, law);
    if (!other.some((n) => side.has(n))) cuts.unshift({ law, side: new Set(side.keys()) });
    node = otherNode(law.leg, node);
  }
  return cuts;
}
