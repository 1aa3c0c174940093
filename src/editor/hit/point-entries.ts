import type { Vec } from '../../drawing/display-list.ts';
import { connectionPlace, pointFrame, toHouse } from '../../geometry/hosting.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { WorkPlane } from '../input/work-plane.ts';
import { type Entry, entry, type Gather, shows, standing } from './pipework-entries.ts';
import type { Shape } from './shapes.ts';

/** Outline of a point's box in a view; undefined where it has no place. */
export function pointRing(plan: Plan, plane: WorkPlane, point: Point): Vec[] | undefined {
  const frame = pointFrame(plan, point);
  if (!frame) return undefined;
  const { widthMm, depthMm, heightMm } = point.size;
  const corners: Xyz[] =
    plane.kind === 'plan'
      ? [
          { x: -widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: depthMm, z: 0 },
          { x: -widthMm / 2, y: depthMm, z: 0 },
        ]
      : [
          { x: -widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: 0 },
          { x: widthMm / 2, y: 0, z: heightMm },
          { x: -widthMm / 2, y: 0, z: heightMm },
        ];
  return corners.map((c) => plane.onto(toHouse(frame, c)));
}

export function* pointEntries(g: Gather): Generator<Entry> {
  for (const point of Object.values(g.plan.points)) {
    const frame = pointFrame(g.plan, point);
    const life = frame && standing(g, 'points', point.id);
    if (!frame || !life || !shows(g, { at: frame.origin, storey: point.storey })) continue;
    const ring = pointRing(g.plan, g.plane, point);
    if (ring) yield entry('point', point.id, { is: 'area', ring }, { ...life, ends: [frame.origin] });
    for (const c of point.connections) {
      const place = connectionPlace(g.plan, point.id, c.id);
      if (!place) continue;
      const shape: Shape = { is: 'spot', at: g.plane.onto(place.at) };
      yield entry('connection', c.id, shape, { ...life, owner: point.id, service: c.service, ends: [place.at] });
    }
  }
}
