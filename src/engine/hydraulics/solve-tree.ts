import type { LinkLaw } from './link-law.ts';
import type { NetPart } from './net-parts.ts';

/** Flows in m3/s by link and heads in m by node, written in place by whatever solves a part. */
export interface Found {
  readonly flow: Float64Array;
  readonly head: Float64Array;
}

/**
 * A part without rings that is held at one place: what is drawn beyond a link flows through it, and heads follow outward.
 * Each link is looked at twice.
 */
export function solveTree(part: NetPart, demand: Float64Array, laws: readonly LinkLaw[], found: Found): void {
  const { order, ways } = part;
  const through = new Map<number, number>();
  for (let i = order.length - 1; i > 0; i--) {
    const way = ways[i];
    const here = order[i];
    if (!way || here === undefined) continue;
    const q = (through.get(here) ?? 0) + (demand[here] ?? 0);
    const before = way.from === here ? way.to : way.from;
    through.set(before, (through.get(before) ?? 0) + q);
    found.flow[way.index] = way.to === here ? q : -q;
  }
  for (let i = 1; i < order.length; i++) {
    const way = ways[i];
    if (!way) continue;
    const lost = laws[way.index]?.loss(found.flow[way.index] ?? 0).headM ?? 0;
    if (way.to === order[i]) found.head[way.to] = (found.head[way.from] ?? 0) - lost;
    else found.head[way.from] = (found.head[way.to] ?? 0) + lost;
  }
}
