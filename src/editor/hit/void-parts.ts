import { boxOnSide, boxOnWall } from '../../drawing/building/box-on-wall.ts';
import type { Vec } from '../../drawing/display-list.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import { floorOnto, type WorkPlane } from '../input/work-plane.ts';
import type { Handle } from './hit-test.ts';
import { type Entry, entry, type Gather, standing } from './pipework-entries.ts';

/** An outline of more corners than this has no rings: it would be all rings. */
const MOST_RINGS = 24;

/** Corners of a box on the face of its wall: lower left, lower right, upper right, upper left. */
function onFace(plan: Plan, v: Void, wallId: string, side: 'left' | 'right'): Vec[] | undefined {
  const wall = plan.walls[wallId];
  const on = wall && boxOnSide(wall, side, v);
  const heights = on && voidHeights(plan, v);
  if (!on || !heights) return undefined;
  const { bottom, top } = heights;
  return [
    [on.fromS, bottom],
    [on.toS, bottom],
    [on.toS, top],
    [on.fromS, top],
  ];
}

/** Voids as they lie in a view: by their outline in plan; on a face only the boxes and chases of that side. */
export function* voidEntries(g: Gather): Generator<Entry> {
  const { plan, view, plane } = g;
  for (const v of Object.values(plan.voids)) {
    const life = standing(g, 'voids', v.id);
    if (!life || v.storey !== g.storey) continue;
    if (view.kind === 'face') {
      const ring = onFace(plan, v, view.wall, view.side);
      if (ring) yield entry('void', v.id, { is: 'area', ring }, life);
      continue;
    }
    const ring = floorOnto(plane, v.outline);
    const holes = v.holes.map((hole) => floorOnto(plane, hole));
    yield entry('void', v.id, { is: 'area', ring, holes }, life);
  }
}

/** Rings at the corners of a chosen void, to drag it by; on a face those of a box, on the side it stands. */
export function voidHandles(plan: Plan, plane: WorkPlane, id: string): Handle[] {
  const v = plan.voids[id];
  if (!v) return [];
  const ring = (at: readonly Vec[]): Handle[] => at.map((p, corner) => ({ map: 'voids', id, corner, at: p }));
  if (plane.kind === 'plan') return v.outline.length > MOST_RINGS ? [] : ring(floorOnto(plane, v.outline));
  const on = boxOnWall(plan, v);
  const { face } = plane;
  if (!on || face?.wall !== on.wall || face.side !== on.side) return [];
  return ring(onFace(plan, v, on.wall, on.side) ?? []);
}
