import { distance3, dot3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';

/** Legs that carry on from each other in line with nothing between them: one piece, measured as one. */
export interface IsoChain {
  readonly legs: readonly DrawnLeg[];
  readonly from: Xyz;
  readonly to: Xyz;
  readonly mm: number;
}

/** Cosine from which two legs are in line. */
const IN_LINE = 0.9998;

const wayFrom = (leg: DrawnLeg, vertex: string): Xyz => {
  const [from, to] = leg.vertexA === vertex ? [leg.placeA.at, leg.placeB.at] : [leg.placeB.at, leg.placeA.at];
  return unit3(sub3(to, from));
};
const farVertex = (leg: DrawnLeg, vertex: string): string => (leg.vertexA === vertex ? leg.vertexB : leg.vertexA);
const placeAt = (leg: DrawnLeg, vertex: string): Xyz => (leg.vertexA === vertex ? leg.placeA.at : leg.placeB.at);

/** The leg that carries on past a vertex; undefined where the piece ends there. */
function onward(
  leg: DrawnLeg,
  vertex: string,
  at: ReadonlyMap<string, readonly DrawnLeg[]>,
  stops: ReadonlySet<string>,
): DrawnLeg | undefined {
  const there = at.get(vertex) ?? [];
  const next = there.find((l) => l !== leg);
  if (there.length !== 2 || !next || stops.has(vertex) || next.map !== leg.map) return undefined;
  if (next.run !== leg.run || next.size !== leg.size || next.state !== leg.state) return undefined;
  return dot3(wayFrom(leg, vertex), wayFrom(next, vertex)) < -IN_LINE ? next : undefined;
}

/**
 * Every leg in exactly one piece from fitting to fitting. `stops`: vertices where something stands in line, so that a
 * length ends there.
 */
export function isoChains(
  legs: readonly DrawnLeg[],
  at: ReadonlyMap<string, readonly DrawnLeg[]>,
  stops: ReadonlySet<string>,
): IsoChain[] {
  const taken = new Set<DrawnLeg>();
  const chains: IsoChain[] = [];
  for (const leg of legs) {
    if (taken.has(leg) || leg.map !== 'legs') continue;
    taken.add(leg);
    const members = [leg];
    const ends = [leg.vertexA, leg.vertexB].map((start): Xyz => {
      let [last, vertex] = [leg, start];
      for (;;) {
        const next = onward(last, vertex, at, stops);
        if (!next || taken.has(next)) return placeAt(last, vertex);
        taken.add(next);
        members.push(next);
        [last, vertex] = [next, farVertex(next, vertex)];
      }
    });
    const [from, to] = ends as [Xyz, Xyz];
    chains.push({ legs: members, from, to, mm: distance3(from, to) });
  }
  return chains;
}
