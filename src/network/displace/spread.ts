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

/** Nodes reached from some by the links of a part; nothing is reached through a node that stays. */
export const reachedFrom = ({ links }: Together, from: readonly string[], stays: Stays): ReadonlySet<string> =>
  new Set(reached(byNode(links), from, stays).keys());

export interface Cut {
  readonly law: LegLaw;
  /** Its end on the side of the first group. */
  readonly near: string;
  /** Every node on that side. */
  readonly side: () => ReadonlySet<string>;
}

/** The nodes and links from the one group to the other, by one shortest way. */
function wayBetween(at: LinksAt, one: readonly string[], other: readonly string[], stays: Stays) {
  const by = reached(at, one, stays);
  const nodes: string[] = [];
  const links: LegLaw[] = [];
  const last = other.find((n) => by.has(n));
  for (let node = last; node !== undefined; ) {
    nodes.unshift(node);
    const law = by.get(node);
    if (!law) break;
    links.unshift(law);
    node = otherNode(law.leg, node);
  }
  return { nodes, links };
}

/**
 * Legs which, taken away, part the one group from the other; nearest to the first group first. Only a leg on the way
 * between them can: so everything off that way is filled from its start, and wherever the fill stands still, the next leg
 * of the way is such a one.
 */
export function cutsBetween(
  { links }: Together,
  one: readonly string[],
  other: readonly string[],
  stays: Stays,
): Cut[] {
  const at = byNode(links);
  const way = wayBetween(at, one, other, stays);
  const stepOf = new Map(way.nodes.map((n, i) => [n, i] as const));
  const onWay = new Set(way.links);
  const goal = new Set(other);
  const starts = new Set(one);
  const filled = new Set(one);
  const cuts: Cut[] = [];
  let far = 0;
  let queue: string[] = [...one];
  while (far < way.links.length) {
    for (const node of queue) {
      if (goal.has(node)) return cuts;
      far = Math.max(far, stepOf.get(node) ?? 0);
      if (stays(node) && !starts.has(node)) continue;
      for (const law of at.get(node) ?? []) {
        const next = otherNode(law.leg, node);
        if (onWay.has(law) || filled.has(next)) continue;
        filled.add(next);
        queue.push(next);
      }
    }
    // What lies on the way before the farthest place reached is reached too.
    queue = way.nodes.slice(0, far + 1).filter((n) => !filled.has(n));
    for (const node of queue) filled.add(node);
    if (queue.length > 0) continue;
    const [law, near, next] = [way.links[far], way.nodes[far], way.nodes[far + 1]];
    if (!law || near === undefined || next === undefined) break;
    cuts.push({ law, near, side: () => new Set(reached(at, one, stays, law).keys()) });
    far++;
    if (filled.has(next)) continue;
    filled.add(next);
    queue = [next];
  }
  return cuts;
}
