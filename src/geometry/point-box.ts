import type { Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import type { Point } from '../plan/records/pipework.ts';
import { type Box3, boxOf } from './boxes.ts';
import { type Frame, pointFrame, toHouse } from './hosting.ts';
import { segmentToBox, type ToBox } from './segment-box.ts';
import type { Line3 } from './segments.ts';
import { sub3 } from './vec.ts';

/**
 * The body of a point in space. In its own frame it reaches from its origin, the middle of the back at the underside,
 * half the width to both sides, the depth out and the height up.
 */
export interface PointBox {
  readonly point: string;
  readonly frame: Frame;
  /** In the point's own frame. */
  readonly local: Box3;
  /** Along the house's axes, round the whole of it. */
  readonly box: Box3;
  /** The four corners in plan: back left, back right, front right, front left as one faces it. */
  readonly footprint: readonly [Xyz, Xyz, Xyz, Xyz];
}

/** Undefined where the point's host is gone or its height leans on nothing. */
export function pointBox(plan: Plan, point: Point): PointBox | undefined {
  const frame = pointFrame(plan, point);
  if (!frame) return undefined;
  const { widthMm, depthMm, heightMm } = point.size;
  const local = { minX: -widthMm / 2, maxX: widthMm / 2, minY: 0, maxY: depthMm, minZ: 0, maxZ: heightMm };
  const corner = (x: number, y: number, z: number) => toHouse(frame, { x, y, z });
  const footprint = [
    corner(local.minX, 0, 0),
    corner(local.maxX, 0, 0),
    corner(local.maxX, depthMm, 0),
    corner(local.minX, depthMm, 0),
  ] as const;
  return { point: point.id, frame, local, footprint, box: boxOf([...footprint, corner(0, 0, heightMm)]) };
}

/** A place of the house in a point's own frame. */
export function toLocal(frame: Frame, p: Xyz): Xyz {
  const d = sub3(p, frame.origin);
  return { x: d.x * frame.right.x + d.y * frame.right.y, y: d.x * frame.out.x + d.y * frame.out.y, z: d.z };
}

/** Nearest of a segment of the house to a point's body; places are in the house. */
export function segmentToPoint(line: Line3, body: PointBox): ToBox {
  const found = segmentToBox({ a: toLocal(body.frame, line.a), b: toLocal(body.frame, line.b) }, body.local);
  return { ...found, onLine: toHouse(body.frame, found.onLine), onBox: toHouse(body.frame, found.onBox) };
}
