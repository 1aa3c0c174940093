import type { Plan } from '../plan/plan.ts';
import type { Xy } from '../plan/records/parts.ts';
import type { BlobRef } from '../plan/records/statements.ts';
import { pointFrame, toHouse } from './hosting.ts';
import { nodePlace } from './places.ts';

export interface PhotoPlace {
  readonly storey: string;
  readonly at: Xy;
}

const middle = (places: readonly Xy[]): Xy => ({
  x: places.reduce((sum, p) => sum + p.x, 0) / places.length,
  y: places.reduce((sum, p) => sum + p.y, 0) / places.length,
});

/** By the thing it is of: at a corner of its case, so that it can be told from the thing itself. */
function ofThing(plan: Plan, id: string): PhotoPlace | undefined {
  const point = plan.points[id];
  if (point) {
    const frame = pointFrame(plan, point);
    const corner = frame && toHouse(frame, { x: point.size.widthMm / 2, y: point.size.depthMm, z: 0 });
    return corner && { storey: point.storey, at: { x: corner.x, y: corner.y } };
  }
  const wall = plan.walls[id];
  if (wall) return { storey: wall.storey, at: middle([wall.a, wall.b]) };
  const space = plan.voids[id];
  if (space) return { storey: space.storey, at: middle(space.outline) };
  const leg = plan.runs[id] && Object.values(plan.legs).find((l) => l.run === id);
  const ends = [leg?.a, leg?.b].flatMap((n) => {
    const node = n === undefined ? undefined : plan.nodes[n];
    return (node && nodePlace(plan, node)) ?? [];
  });
  const [first] = ends;
  return first?.storey ? { storey: first.storey, at: middle(ends.map((e) => e.at)) } : undefined;
}

/** Where a photo was taken of, seen from above; undefined where it is pinned to nothing that is still there. */
export function photoPlace(plan: Plan, photo: BlobRef): PhotoPlace | undefined {
  if (photo.kind !== 'photo') return undefined;
  const { pin, on } = photo;
  if (pin) return plan.storeys[pin.storey] ? { storey: pin.storey, at: { x: pin.x, y: pin.y } } : undefined;
  return on === null ? undefined : ofThing(plan, on);
}
