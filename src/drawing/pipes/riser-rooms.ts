import RBush from 'rbush';
import type { DrawnLeg } from './drawn-leg.ts';
import type { Riser } from './risers.ts';

/** Marks further apart than this lie clear of one another at every scale that shows pipes. */
const FAR_MM = 200;
/** Nearer than this one stands on the other, and smaller marks would not part them. */
const SAME_MM = 1;

/** Half the distance from each riser to the nearest other, mm of the plane, by its owner. Left out where it is far. */
export function riserRooms(risers: Iterable<Riser>): ReadonlyMap<DrawnLeg, number> {
  const owners = [...new Set([...risers].map((r) => r.owner))];
  const index = new RBush<{ minX: number; minY: number; maxX: number; maxY: number }>();
  index.load(owners.map(({ a: [x, y] }) => ({ minX: x, minY: y, maxX: x, maxY: y })));
  const rooms = new Map<DrawnLeg, number>();
  for (const owner of owners) {
    const [x, y] = owner.a;
    const near = index.search({ minX: x - FAR_MM, minY: y - FAR_MM, maxX: x + FAR_MM, maxY: y + FAR_MM });
    const apart = near.map((n) => Math.hypot(n.minX - x, n.minY - y)).filter((d) => d > SAME_MM);
    if (apart.length > 0) rooms.set(owner, Math.min(...apart) / 2);
  }
  return rooms;
}
