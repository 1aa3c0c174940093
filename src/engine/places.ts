import { pointBox } from '../geometry/point-box.ts';
import type { Network } from '../network/network.ts';
import type { Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import { quantise } from '../plan/units.ts';
import type { FindingPlace } from '../report/finding.ts';

/** A place for a finding, to the tenth of a mm that every stored length has. */
export const atPlace = (storey: string, at: Xyz, ring = false): FindingPlace => ({
  storey,
  x: quantise(at.x),
  y: quantise(at.y),
  z: quantise(at.z),
  ring,
});

/** Place of a vertex for a finding; null where it has none. */
export function atVertex(network: Network, vertex: string | undefined): FindingPlace | null {
  const place = vertex === undefined ? null : (network.vertices.get(vertex)?.place ?? null);
  return place && atPlace(place.storey, place.at);
}

/** Where a point stands, at its middle from side to side; null where it has no place. */
export function atPoint(plan: Plan, id: string): FindingPlace | null {
  const point = plan.points[id];
  const box = point && pointBox(plan, point);
  return point && box ? atPlace(point.storey, box.frame.origin) : null;
}

/** Middle of an edge; null where one of its ends has no place. */
export function atEdge(network: Network, edge: string | undefined): FindingPlace | null {
  const e = edge === undefined ? undefined : network.edges.get(edge);
  const a = e && network.vertices.get(e.a)?.place;
  const b = e && network.vertices.get(e.b)?.place;
  if (!a || !b) return a || b ? atPlace((a ?? b)?.storey ?? '', (a ?? b)?.at ?? { x: 0, y: 0, z: 0 }) : null;
  return atPlace(a.storey, { x: (a.at.x + b.at.x) / 2, y: (a.at.y + b.at.y) / 2, z: (a.at.z + b.at.z) / 2 });
}
