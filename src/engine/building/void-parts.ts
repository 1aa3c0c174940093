import { type VoidStretch, voidFinder } from '../../geometry/void-stretches.ts';
import type { Network } from '../../network/network.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Counts } from '../clearance/counts.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Pipe } from '../clearance/pipes.ts';
import { midSentence } from '../say-names.ts';

/** A part of a live leg that lies in a standing void. */
export interface VoidPart extends VoidStretch {
  readonly pipe: Pipe;
  readonly space: Void;
}

/** Every live leg in every void it runs in, in the order of legs. */
export function findVoidParts(network: Network, pipes: readonly Pipe[], counts: Counts): VoidPart[] {
  const voids = voidFinder(network.plan, standingBuilding(network));
  const found = pipes.flatMap((pipe) =>
    voids.stretches(pipe.body).flatMap((part): VoidPart[] => {
      const space = network.plan.voids[part.void];
      return space ? [{ ...part, pipe, space }] : [];
    }),
  );
  counts.boxQueries += voids.counts.queries;
  return found;
}

/** "first floor void", "hall ceiling": a void inside a sentence. */
export function sayVoid(space: Void): string {
  if (space.name !== '') return midSentence(space.name);
  return space.kind === 'floor' || space.kind === 'ceiling' ? `${space.kind} void` : space.kind;
}
