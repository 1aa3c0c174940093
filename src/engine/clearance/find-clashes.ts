import { grow } from '../../geometry/boxes.ts';
import { capsuleGap } from '../../geometry/segments.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Network } from '../../network/network.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { constant, figure } from '../../reference/figure.ts';
import { edition } from '../../reference/tables.ts';
import type { Counts } from './counts.ts';
import type { Pipe, PipeIndex } from './pipes.ts';

/** Two runs nearer than they should be, or one that goes through itself: the worst place, and how many more there are. */
export interface Clash {
  readonly runs: readonly [string, string];
  readonly legs: readonly [string, string];
  /** Surface to surface, lagging included. */
  readonly gapMm: number;
  /** How much of that the lagging of the two takes. */
  readonly laggingMm: number;
  readonly centresMm: number;
  /** Half way between the two surfaces' nearest places. */
  readonly at: Xyz;
  readonly storey: string;
  readonly more: number;
  readonly gas: boolean;
  readonly sizeKnown: boolean;
  readonly heightAssumed: boolean;
}

interface Near {
  readonly one: Pipe;
  readonly other: Pipe;
  readonly gapMm: number;
  readonly centresMm: number;
  readonly at: Xyz;
}

/** Clear distance looked for about any pipe: the largest the tables ask of a pair of pipes. */
function reach(network: Network): number {
  const table = edition('gas-clearance', network.plan.basis.editions);
  const gas = table && figure(table, 'pipe', 'mm');
  const touching = figure('pipe-clearance', 'touching', 'mm');
  return Math.max(gas?.is === 'known' ? gas.lo : 0, touching.is === 'known' ? touching.lo : 0);
}

/** Places where two runs are joined: about a joint they are near each other because they are meant to be. */
function jointsOf(network: Network, one: Pipe, other: Pipe): Xyz[] {
  const runs = new Set([one.run, other.run]);
  const found: Xyz[] = [];
  for (const edge of [one.edge, other.edge]) {
    for (const id of [edge.a, edge.b]) {
      const v = network.vertices.get(id);
      const met = new Set(v?.edges.map((e) => network.edges.get(e)?.run));
      if (v?.place && [...runs].every((r) => met.has(r))) found.push(v.place.at);
    }
  }
  return found;
}

/** A fitting reaches about two diameters from its centre. */
const FITTING_REACH = constant('pipe-judgement', 'fitting reach', 'diameters');

/** Do they end at one place? */
const meet = ({ edge }: Pipe, other: Pipe): boolean =>
  [edge.a, edge.b].some((v) => v === other.edge.a || v === other.edge.b);

function meant(network: Network, one: Pipe, other: Pipe, at: Xyz): boolean {
  const near = FITTING_REACH * 2 * (one.body.radiusMm + other.body.radiusMm);
  return jointsOf(network, one, other).some((joint) => distance3(joint, at) <= near);
}

const keyOf = (a: string, b: string): string => (a < b ? `${a}|${b}` : `${b}|${a}`);

/** Stretches of nearness that do not touch each other count apart: the same corner seen from two legs is one place. */
const PLACES_APART_MM = constant('nearness', 'one place');

function worstOf(found: readonly Near[]): { worst: Near; places: number } {
  const sorted = [...found].sort((a, b) => a.gapMm - b.gapMm || (a.one.edge.id < b.one.edge.id ? -1 : 1));
  const places: Xyz[] = [];
  for (const n of sorted) if (!places.some((p) => distance3(p, n.at) < PLACES_APART_MM)) places.push(n.at);
  return { worst: sorted[0] as Near, places: places.length };
}

/**
 * Every pair of runs nearer than the tables ask, surface to surface with lagging, exact; each pair once.
 * Pairs are found by box, so the cost goes with the pipes that are near each other and not with all pairs.
 */
export function findClashes(network: Network, index: PipeIndex, counts: Counts): Clash[] {
  const clear = reach(network);
  const touch = touching();
  const pairs = new Map<string, Near[]>();
  for (const one of index.pipes) {
    for (const other of index.search(grow(one.box, clear))) {
      if (other.edge.id <= one.edge.id || meet(one, other)) continue;
      counts.distances += 1;
      const found = capsuleGap(one.body, other.body);
      const gas = one.edge.service === 'gas' || other.edge.service === 'gas';
      // A run may lie close beside itself, as in a jog; it may not go through itself.
      const least = other.run === one.run ? 0 : gas ? clear : touch;
      if (found.gapMm >= least) continue;
      const at = {
        x: (found.onA.x + found.onB.x) / 2,
        y: (found.onA.y + found.onB.y) / 2,
        z: (found.onA.z + found.onB.z) / 2,
      };
      if (meant(network, one, other, at)) continue;
      const key = keyOf(one.run, other.run);
      const near = { one, other, gapMm: found.gapMm, centresMm: found.distance, at };
      pairs.set(key, [...(pairs.get(key) ?? []), near]);
    }
  }
  return [...pairs.values()].map((found): Clash => {
    const { worst, places } = worstOf(found);
    const { one, other } = worst;
    return {
      runs: one.run < other.run ? [one.run, other.run] : [other.run, one.run],
      legs: [one.edge.id, other.edge.id],
      gapMm: worst.gapMm,
      laggingMm: (one.edge.insulation?.thicknessMm ?? 0) + (other.edge.insulation?.thicknessMm ?? 0),
      centresMm: worst.centresMm,
      at: worst.at,
      storey: one.storey,
      more: places - 1,
      gas: one.edge.service === 'gas' || other.edge.service === 'gas',
      sizeKnown: one.sizeKnown && other.sizeKnown,
      heightAssumed: one.heightAssumed || other.heightAssumed,
    };
  });
}

function touching(): number {
  const found = figure('pipe-clearance', 'touching', 'mm');
  return found.is === 'known' ? found.lo : 0;
}
