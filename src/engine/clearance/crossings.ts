import { type WallCrossing, wallFinder } from '../../geometry/wall-crossings.ts';
import type { Standing } from '../../geometry/wall-frame.ts';
import type { Network } from '../../network/network.ts';
import type { Counts } from './counts.ts';
import type { Pipe } from './pipes.ts';

/** A new leg inside a wall. */
export interface Crossing extends WallCrossing {
  readonly pipe: Pipe;
}

/** Walls and openings that stand in the case. */
export function standingBuilding(network: Network): Standing {
  const known = standings.get(network);
  if (known) return known;
  const { alive } = network;
  const made = { has: (id: string) => alive.has('walls', id) || alive.has('openings', id) || alive.has('voids', id) };
  standings.set(network, made);
  return made;
}

const standings = new WeakMap<Network, Standing>();

/** Where new legs pass through walls of their storey, in the order of legs. Pipe that is there already has its hole. */
export function findCrossings(network: Network, pipes: readonly Pipe[], counts: Counts): Crossing[] {
  const walls = wallFinder(network.plan, standingBuilding(network));
  const found = pipes
    .filter((p) => p.edge.state === 'new')
    .flatMap((pipe) => walls.crossings(pipe.body.a, pipe.body.b, null).map((c) => ({ ...c, pipe })));
  counts.boxQueries += walls.counts.queries;
  return found;
}
