import { tubeOdMm } from '../../catalogue/tubes.ts';
import { type BoxIndex, createBoxIndex } from '../../geometry/box-index.ts';
import type { Box3 } from '../../geometry/boxes.ts';
import { type Capsule, capsuleBox } from '../../geometry/segments.ts';
import type { Edge, Network } from '../../network/network.ts';
import type { Counts } from './counts.ts';

/** A leg as a body in the house, lagging included. */
export interface Pipe {
  readonly edge: Edge;
  readonly run: string;
  readonly body: Capsule;
  readonly box: Box3;
  readonly storey: string;
  /** False where nobody read its size: it is then taken as a line, and is at least as near as it looks. */
  readonly sizeKnown: boolean;
  /** One of its heights was assumed. */
  readonly heightAssumed: boolean;
}

export interface PipeIndex {
  readonly pipes: readonly Pipe[];
  search(box: Box3): Pipe[];
}

function toPipe(network: Network, edge: Edge): Pipe[] {
  if (edge.kind !== 'leg') return [];
  const a = network.vertices.get(edge.a)?.place;
  const b = network.vertices.get(edge.b)?.place;
  if (!a || !b) return [];
  const od = tubeOdMm(edge.tube);
  const radiusMm = (od ?? 0) / 2 + (edge.insulation?.thicknessMm ?? 0);
  const body: Capsule = { a: a.at, b: b.at, radiusMm };
  const heightAssumed = a.zLo !== a.zHi || b.zLo !== b.zHi;
  return [
    { edge, run: edge.run, body, box: capsuleBox(body), storey: a.storey, sizeKnown: od !== undefined, heightAssumed },
  ];
}

/** Every live leg with a place. Stretches nobody can see have no place to be near to. */
export function indexPipes(network: Network, counts: Counts): PipeIndex {
  const pipes = [...network.edges.values()].flatMap((e) => toPipe(network, e));
  const index: BoxIndex<Pipe> = createBoxIndex(pipes);
  return {
    pipes,
    search(box) {
      counts.boxQueries += 1;
      return index.search(box);
    },
  };
}
