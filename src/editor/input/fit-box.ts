import type { Box, Vec, View } from '../../drawing/display-list.ts';
import { ceilingZ, floorZ } from '../../geometry/heights.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { planeAt } from '../../geometry/trace-place.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Pane } from '../editor-api.ts';
import { type WorkPlane, workPlane } from './work-plane.ts';

/** Left free about what is fitted, px. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Narrower than this, a pane gives its whole width to the house. */
const NARROW_PX = 480;

/** Room for words over the drawing, measures left of it and under it, and the scale bar under these. */
const PLAN: Margins = { left: 58, right: 26, top: 60, bottom: 104 };
const NARROW: Margins = { left: 14, right: 14, top: 48, bottom: 100 };
const FACE: Margins = { left: 40, right: 40, top: 40, bottom: 40 };

export function marginsOf(pane: Pick<Pane, 'view' | 'width'>): Margins {
  if (pane.view.kind === 'face') return FACE;
  return pane.width < NARROW_PX ? NARROW : PLAN;
}

function around(pts: Iterable<Vec>): Box | null {
  let box: Box | null = null;
  for (const [x, y] of pts) {
    box = box
      ? {
          minX: Math.min(box.minX, x),
          minY: Math.min(box.minY, y),
          maxX: Math.max(box.maxX, x),
          maxY: Math.max(box.maxY, y),
        }
      : { minX: x, minY: y, maxX: x, maxY: y };
  }
  return box;
}

function* cornersOf(plan: Plan, plane: WorkPlane, storey: string): Generator<Vec> {
  for (const wall of Object.values(plan.walls)) {
    if (wall.storey !== storey) continue;
    const half = wall.thicknessMm / 2;
    for (const end of [wall.a, wall.b]) {
      const [x, y] = plane.onto({ ...end, z: 0 });
      yield [x - half, y - half];
      yield [x + half, y + half];
    }
  }
}

/** Ends of the pipes that are drawn on a storey. */
function* endsOf(plan: Plan, plane: WorkPlane, storey: string): Generator<Vec> {
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) {
      for (const id of [pipe.a, pipe.b]) {
        const node = plan.nodes[id];
        const place = node && nodePlace(plan, node);
        if (place?.storey === storey) yield plane.onto(place.at);
      }
    }
  }
}

function* pointsOf(plan: Plan, plane: WorkPlane, storey: string): Generator<Vec> {
  for (const point of Object.values(plan.points)) {
    const at = point.storey === storey ? pointFrame(plan, point)?.origin : undefined;
    if (at) yield plane.onto(at);
  }
}

/** Corners of the pictures that lie under a storey. One squared from a slant reaches to the horizon and is left out. */
function* picturesOf(plan: Plan, plane: WorkPlane, storey: string): Generator<Vec> {
  for (const { kind, on, place, pixels } of Object.values(plan.blobRefs)) {
    if (kind !== 'trace' || on !== storey || !place || !pixels || place.square) continue;
    for (const x of [0, pixels.width]) {
      for (const y of [0, pixels.height]) {
        const at = planeAt(place, pixels, { x, y });
        if (at) yield plane.onto({ ...at, z: 0 });
      }
    }
  }
}

/**
 * What "show all" brings into a pane, mm of the view's plane: the walls and pipes of the storey and the pictures under it, else
 * its points; of a face, all of the wall from floor to ceiling. What belongs to the neighbours does not make the house small. Null where
 * there is nothing.
 */
export function fitBox(plan: Plan, view: View): Box | null {
  if (view.kind === 'face') {
    const wall = plan.walls[view.wall];
    const floor = wall && floorZ(plan, wall.storey);
    const ceiling = wall && ceilingZ(plan, wall.storey);
    if (!wall || floor === undefined || ceiling === undefined) return null;
    return { minX: 0, minY: floor, maxX: Math.hypot(wall.a.x - wall.b.x, wall.a.y - wall.b.y), maxY: ceiling };
  }
  const { storey } = view;
  const plane = workPlane(plan, view);
  if (!plane) return null;
  const house = around([
    ...cornersOf(plan, plane, storey),
    ...endsOf(plan, plane, storey),
    ...picturesOf(plan, plane, storey),
  ]);
  return house ?? around(pointsOf(plan, plane, storey));
}
