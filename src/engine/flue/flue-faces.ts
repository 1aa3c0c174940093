import { quantise } from '../../plan/units.ts';
import type { FlueDistance, FlueFace } from '../../report/flue-face.ts';
import type { Given } from '../given.ts';
import { type Judged, worstState } from './judge-distance.ts';
import { terminalDistances } from './terminal-distances.ts';

function told({ table: _table, missing: _missing, what: _what, ...distance }: Judged): FlueDistance {
  return distance;
}

/** The outside of every terminal that stands in this case, with its distances, in the order of the terminals. */
export function flueFacesOf(given: Given): readonly FlueFace[] {
  return terminalDistances(given).map(({ terminal, distances, missing }): FlueFace => {
    const { point, appliance, at } = terminal;
    const host = point.place.on === 'wall' ? point.place : null;
    return {
      terminal: point.id,
      appliance: appliance?.id ?? null,
      storey: point.storey,
      wall: host?.wall ?? null,
      side: host?.side ?? null,
      at: { x: quantise(at.x), y: quantise(at.y), z: quantise(at.z) },
      state: worstState(distances.map((d) => d.state)),
      distances: distances.map(told),
      missing,
    };
  });
}
