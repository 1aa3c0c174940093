import { goesIn } from '../catalogue/define-fitting.ts';
import { tubeKinds } from '../catalogue/tubes.ts';
import { addSpans } from './chains.ts';
import type { Fitting } from './fitting.ts';
import { type Edge, type Network, otherEnd, sameTube } from './network.ts';
import { joiningOf, type PlacedPiece } from './piece-makers.ts';
import { sayTube } from './tube-sizes.ts';

/** Does the tube go on uncut through a vertex? Straight on, or round a bend that is pulled in it; not through a valve. */
function goesOn(network: Network, fitting: Fitting): boolean {
  const items = network.vertices.get(fitting.vertex)?.items ?? [];
  return (fitting.is === 'plain' || fitting.is === 'bend') && items.length === 0;
}

/** Legs in groups of one tube, cut only where something stands between them. Unseen stretches are no pieces. */
function tubesIn(network: Network, fittings: ReadonlyMap<string, Fitting>): Edge[][] {
  const done = new Set<string>();
  const tubes: Edge[][] = [];
  for (const first of network.edges.values()) {
    if (first.kind === 'stretch' || done.has(first.id)) continue;
    done.add(first.id);
    const tube = [first];
    for (const end of [first.a, first.b]) {
      let [edge, here]: [Edge, string] = [first, end];
      for (;;) {
        const fitting = fittings.get(here);
        const next = network.vertices
          .get(here)
          ?.edges.map((id) => network.edges.get(id))
          .find((e) => e !== undefined && e.id !== edge.id);
        if (!fitting || !next || done.has(next.id) || next.kind === 'stretch') break;
        if (!goesOn(network, fitting) || !sameTube(edge.tube, next.tube) || edge.state !== next.state) break;
        done.add(next.id);
        tube.push(next);
        [edge, here] = [next, otherEnd(next, here)];
      }
    }
    tubes.push(tube);
  }
  return tubes;
}

/** Tube by the piece, in mm between the centres of what stands at its ends. */
export function tubePieces(network: Network, fittings: ReadonlyMap<string, Fitting>): PlacedPiece[] {
  return tubesIn(network, fittings).flatMap((edges): PlacedPiece[] => {
    const [first] = edges;
    if (!first) return [];
    const { value } = addSpans(edges.map((e) => e.lengthMm));
    const joining = joiningOf(network.plan.runs[first.run], first.tube.kind);
    const size = sayTube(first.tube);
    const kind = tubeKinds.get(first.tube.kind)?.label.toLowerCase() ?? first.tube.kind;
    const end = goesIn({ joining, sizes: [size] }, size);
    const sizeUnknown = first.tube.size === null ? 'The size of this pipe is not known.' : null;
    return [
      {
        kind: `tube-${first.tube.kind}`,
        family: 'tube',
        name: kind.endsWith('pipe') ? kind : `${kind} tube`,
        size,
        joining: '',
        ends: [...end, ...end],
        amount: value ?? 0,
        unit: 'mm',
        run: first.run,
        at: { leg: first.id },
        note: '',
        unverified: edges.some((e) => e.sureness === 'assumed'),
        unresolved: value === null ? 'The length of this pipe is not known.' : sizeUnknown,
        state: first.state,
      },
    ];
  });
}
