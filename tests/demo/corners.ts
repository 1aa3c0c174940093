import { nodePlace } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';

export type Corner = readonly [x: number, y: number, z: number];

/** The corners a run goes by, in order, to a thousandth of a mm. Throws where its legs do not follow on each other. */
export function wayOf(plan: Plan, run: string): Corner[] {
  const legs = Object.values(plan.legs).filter((leg) => leg.run === run);
  legs.slice(1).forEach((leg, i) => {
    if (leg.a !== legs[i]?.b) throw new Error(`${run}: ${leg.id} does not follow`);
  });
  const round = (mm: number) => Math.round(mm * 1000) / 1000 + 0;
  return [legs[0]?.a ?? '', ...legs.map((leg) => leg.b)].map((id) => {
    const node = plan.nodes[id];
    const place = node && nodePlace(plan, node);
    if (!place) throw new Error(`node ${id} has no place`);
    return [round(place.at.x), round(place.at.y), round(place.at.z)];
  });
}
