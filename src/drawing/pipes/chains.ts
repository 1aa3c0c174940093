import type { Vec } from '../display-list.ts';
import type { DrawnLeg } from './drawn-leg.ts';
import { outOf, parallel } from './joints.ts';
import type { PipesInView } from './pipes-in-view.ts';

/** Legs that carry on from each other in line: one line to the eye, whatever stands at the nodes between. */
export interface Chain {
  readonly legs: readonly DrawnLeg[];
  /** Along the first leg, turned to the half circle from just above -x to +x, so that neighbours agree. */
  readonly along: Vec;
  readonly n: Vec;
  /** Place along `n`, and the extent along `along`. */
  readonly level: number;
  readonly from: number;
  readonly upTo: number;
  /** Which way the line turns off at its lesser and greater end: 1 towards `n`, -1 away, 0 not. */
  readonly turnFrom: number;
  readonly turnUpTo: number;
}

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1];

/** Legs in line with `leg` through its vertices, over and over. */
function gather(leg: DrawnLeg, at: PipesInView['at'], taken: Set<DrawnLeg>): DrawnLeg[] {
  const legs = [leg];
  taken.add(leg);
  for (let i = 0; i < legs.length; i++) {
    const one = legs[i] as DrawnLeg;
    for (const vertex of [one.vertexA, one.vertexB]) {
      for (const next of at.get(vertex) ?? []) {
        if (taken.has(next) || next.endOn || next.serviceKey !== one.serviceKey) continue;
        if (!parallel(outOf(one, vertex), outOf(next, vertex))) continue;
        taken.add(next);
        legs.push(next);
      }
    }
  }
  return legs;
}

function turnAt(vertex: string, chain: ReadonlySet<DrawnLeg>, at: PipesInView['at'], n: Vec): number {
  for (const leg of at.get(vertex) ?? []) {
    if (leg.endOn || chain.has(leg)) continue;
    const across = dot(outOf(leg, vertex), n);
    if (Math.abs(across) > 0.1) return Math.sign(across);
  }
  return 0;
}

export function chainOf(legs: readonly DrawnLeg[], at: PipesInView['at']): Chain {
  const first = legs[0] as DrawnLeg;
  const l = first.lengthMm || 1;
  const d: Vec = [(first.b[0] - first.a[0]) / l, (first.b[1] - first.a[1]) / l];
  const along: Vec = d[0] < -1e-6 || (d[0] < 1e-6 && d[1] < 0) ? [-d[0], -d[1]] : d;
  const n: Vec = [-along[1], along[0]];
  const set = new Set(legs);
  const ends = legs.flatMap((leg) => [
    { s: dot(leg.a, along), vertex: leg.vertexA },
    { s: dot(leg.b, along), vertex: leg.vertexB },
  ]);
  const least = ends.reduce((x, y) => (y.s < x.s ? y : x));
  const most = ends.reduce((x, y) => (y.s > x.s ? y : x));
  return {
    legs,
    along,
    n,
    level: dot(first.a, n),
    from: least.s,
    upTo: most.s,
    turnFrom: turnAt(least.vertex, set, at, n),
    turnUpTo: turnAt(most.vertex, set, at, n),
  };
}

export function chainsOf(pipes: PipesInView): Chain[] {
  const taken = new Set<DrawnLeg>();
  const chains: Chain[] = [];
  for (const leg of pipes.legs) {
    if (!leg.endOn && !taken.has(leg)) chains.push(chainOf(gather(leg, pipes.at, taken), pipes.at));
  }
  return chains;
}
