import { nodePlace } from '../../geometry/places.ts';
import { pointBox } from '../../geometry/point-box.ts';
import { dot, dot3, sub, unit } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { Selected } from '../editor-api.ts';

/** From the least to the most that something reaches along a way of the house, mm. */
export interface Extent {
  readonly lo: number;
  readonly hi: number;
}

const UP = 0.9;
export const isUpright = (way: Xyz): boolean => Math.abs(way.z) > UP;

const around = (values: readonly number[]): Extent | undefined =>
  values.length === 0 ? undefined : { lo: Math.min(...values), hi: Math.max(...values) };

/** Free and tail nodes of what is chosen of the pipework, each once. */
export function nodesOfThing(plan: Plan, { map, id }: Selected): string[] {
  if (map === 'nodes') return plan.nodes[id] ? [id] : [];
  if (map === 'items') return [plan.items[id]?.node ?? []].flat();
  const pipes = [...Object.values(plan.legs), ...Object.values(plan.stretches)];
  const own = pipes.filter((p) => (map === 'runs' ? p.run === id : p.id === id && map !== 'points'));
  return [...new Set(own.flatMap((p) => [p.a as string, p.b as string]))];
}

function ofWall(plan: Plan, id: string, way: Xyz): Extent | undefined {
  const wall = plan.walls[id];
  if (!wall || isUpright(way)) return undefined;
  const d = unit(sub(wall.b, wall.a));
  // Half the thickness as it lies across the way: a wall that stands square to it reaches from face to face.
  const half = (Math.abs(d.x * way.y - d.y * way.x) * wall.thicknessMm) / 2;
  const ends = [dot(wall.a, way), dot(wall.b, way)];
  return { lo: Math.min(...ends) - half, hi: Math.max(...ends) + half };
}

/** Heights of points are told by the place they have: their base. */
function ofPoint(plan: Plan, id: string, way: Xyz): Extent | undefined {
  const point = plan.points[id];
  const body = point && pointBox(plan, point);
  if (!body) return undefined;
  if (isUpright(way)) return { lo: body.frame.origin.z, hi: body.frame.origin.z };
  return around(body.footprint.map((p) => dot3(p, way)));
}

const places = (pts: readonly Xy[], way: Xyz): Extent | undefined =>
  isUpright(way) ? undefined : around(pts.map((p) => dot(p, way)));

/** How far a chosen thing reaches along a way; undefined where it has no place along it. */
export function extentOf(plan: Plan, thing: Selected, way: Xyz): Extent | undefined {
  const { map, id } = thing;
  if (map === 'walls') return ofWall(plan, id, way);
  if (map === 'points') return ofPoint(plan, id, way);
  if (map === 'voids') return places(plan.voids[id]?.outline ?? [], way);
  const nodes = nodesOfThing(plan, thing).flatMap((n) => plan.nodes[n] ?? []);
  return around(nodes.flatMap((n) => nodePlace(plan, n)?.at ?? []).map((p) => dot3(p, way)));
}

/** All of them together; undefined where none has a place. */
export function extentOfAll(plan: Plan, things: readonly Selected[], way: Xyz): Extent | undefined {
  const all = things.flatMap((t) => extentOf(plan, t, way) ?? []);
  return all.length === 0
    ? undefined
    : { lo: Math.min(...all.map((e) => e.lo)), hi: Math.max(...all.map((e) => e.hi)) };
}
