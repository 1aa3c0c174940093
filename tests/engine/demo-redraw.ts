import type { Plan } from '../../src/plan/plan.ts';

export type Place = readonly [x: number, y: number, z: number];

/** Draws a run again through other corners, from the node it starts at to the node it ends at. */
export function redraw(plan: Plan, run: string, storey: string, corners: readonly Place[]): Plan {
  const old = Object.values(plan.legs).filter((leg) => leg.run === run);
  const [first, last] = [old[0], old.at(-1)];
  if (!first || !last) throw new Error(`nothing drawn of ${run}`);
  for (const leg of old) delete plan.legs[leg.id];
  const ids = corners.map(([x, y, mm], i) => {
    const id = `${run}-again-${i}`;
    const place = { on: 'storey', storey, x, y, height: { from: 'datum', of: null, mm } };
    plan.nodes[id] = { id, place, turn: null, option: first.option } as Plan['nodes'][string];
    return id;
  });
  const way = [first.a, ...ids, last.b];
  way.slice(1).forEach((b, i) => {
    const id = `${run}-again-leg-${i}`;
    plan.legs[id] = { ...first, id, a: way[i] ?? b, b } as Plan['legs'][string];
  });
  return plan;
}

/** Moves a point along its wall, or off it. Pipes at its tails come with it, corners next to them do not. */
export function shift(plan: Plan, point: string, by: { readonly along?: number; readonly off?: number }): Plan {
  const place = plan.points[point]?.place;
  if (place?.on !== 'wall') throw new Error(`${point} is on no wall`);
  place.alongMm = (place.alongMm + (by.along ?? 0)) as typeof place.alongMm;
  place.standOffMm = (place.standOffMm + (by.off ?? 0)) as typeof place.standOffMm;
  return plan;
}
