import type { Section } from '../../network/trace.ts';
import { addQuantities, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { contentOf } from '../water/content.ts';
import { lengthOf, metresOf } from './lengths.ts';

/** Water pipe from the last place where something flows to a capped end. */
export interface DeadLeg {
  readonly vertex: string;
  readonly sections: readonly Section[];
  readonly lengthM: Quantity;
  /** Null where a bore is not known. */
  readonly litres: Quantity | null;
}

const STOP_END = 'stop-end';

/** Capped ends of cold and hot pipe that a source still fills. Ends in the air are told of by the rules of the network. */
export function deadLegs(given: Given): DeadLeg[] {
  const { network, plan } = given;
  return given.traces
    .filter((t) => t.circuit === 'cold' || t.circuit === 'hot')
    .flatMap((trace) =>
      trace.deadEnds.flatMap(({ vertex, why }): DeadLeg[] => {
        const here = network.vertices.get(vertex);
        const stopped = here?.items.some((i) => plan.items[i]?.kind === STOP_END) ?? false;
        if (why !== 'capped' && !(why === 'open' && stopped)) return [];
        const way = [...trace.pathTo(vertex)].reverse();
        const fed = way.findIndex((s) => s.serves.length > 0);
        const sections = (fed < 0 ? way : way.slice(0, fed)).reverse();
        if (sections.length === 0) return [];
        const parts = sections.map((s) => contentOf(metresOf(s.lengthMm), s.tube.kind, s.tube.size));
        const known = parts.filter((p) => p !== null);
        const litres = known.length === parts.length ? addQuantities(known) : null;
        return [{ vertex, sections, lengthM: lengthOf(sections), litres }];
      }),
    );
}
