import { pointKinds } from '../../catalogue/point-kinds.ts';
import { type Frame, pointFrame, toHouse } from '../../geometry/hosting.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Fragment, Vec, Wish } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { keepClear } from '../fragments/keep-clear.ts';
import { pointEdge } from '../fragments/point.fragment.ts';
import { symbolItems } from '../fragments/symbol-items.ts';
import type { PipeState } from '../pipes/leg-style.ts';
import { NEAR_FACE_MM } from '../pipes/pipes-in-view.ts';
import type { FacePlane } from '../pipes/plane.ts';
import { levelOf } from '../text/say-level.ts';
import { type Across, rectangle } from './face-wall.ts';

const facing = (frame: Frame, plane: FacePlane): number =>
  frame.right.x * plane.right.x + frame.right.y * plane.right.y;

/** Middle of a point across the face, and its drawn width there: its own, or its depth where it stands sideways. */
function laid(frame: Frame, point: Point, plane: FacePlane): { u: number; width: number; mirrored: boolean } {
  const way = facing(frame, plane);
  const sideways = Math.abs(way) < 0.7;
  const centre = toHouse(frame, { x: 0, y: sideways ? point.size.depthMm / 2 : 0, z: 0 });
  return {
    u: plane.at(centre)[0],
    width: sideways ? point.size.depthMm : point.size.widthMm,
    mirrored: !sideways && way < 0,
  };
}

/** A flue that ends on the other side of this wall comes through it. */
function comesThrough(point: Point, plane: FacePlane): boolean {
  return (
    plane.view.kind === 'face' &&
    point.kind === 'flue-terminal' &&
    point.place.on === 'wall' &&
    point.place.wall === plane.view.wall
  );
}

/** Does a point show on a face: on this side of it, or standing near before it? */
export function onFace(plan: Plan, point: Point, plane: FacePlane): boolean {
  if (point.storey !== plane.storey || plane.view.kind !== 'face') return false;
  const { place } = point;
  if (place.on === 'wall' && place.wall === plane.view.wall)
    return place.side === plane.view.side || comesThrough(point, plane);
  const frame = pointFrame(plan, point);
  if (!frame) return false;
  const middle = toHouse(frame, { x: 0, y: point.size.depthMm / 2, z: 0 });
  const out = plane.toReader(middle);
  const { u } = laid(frame, point, plane);
  return out >= 0 && out <= NEAR_FACE_MM && u >= plane.from && u <= plane.upTo;
}

/** Clear distances of an appliance to what stands beside it: walls that meet the face, openings. */
function clearances(
  box: { from: number; upTo: number; low: number; high: number },
  beside: readonly Beside[],
  point: Point,
): Wish[] {
  const level = box.high - Math.min(150, (box.high - box.low) / 4);
  const near = beside.filter((b) => b.low < box.high && b.high > box.low);
  const left = near.filter((b) => b.upTo <= box.from + 0.5).sort((p, q) => q.upTo - p.upTo)[0];
  const right = near.filter((b) => b.from >= box.upTo - 0.5).sort((p, q) => p.from - q.from)[0];
  const wish = (from: number, upTo: number, way: Vec): Wish => ({
    w: 'dimension',
    a: [from, level],
    b: [upTo, level],
    side: [0, 1],
    awayMm: 0,
    text: Math.round(upTo - from).toString(),
    unsure: point.sureness === 'assumed',
    measures: { of: 'point', id: point.id, way },
  });
  const found: Wish[] = [];
  if (left && box.from - left.upTo >= 1) found.push(wish(left.upTo, box.from, [1, 0]));
  if (right && right.from - box.upTo >= 1) found.push(wish(box.upTo, right.from, [-1, 0]));
  return found;
}

export interface Beside extends Across {
  readonly low: number;
  readonly high: number;
}

/** A point on a face by its kind's face symbol. */
export function facePoint(
  plan: Plan,
  point: Point,
  state: PipeState,
  plane: FacePlane,
  beside: readonly Beside[],
): Fragment {
  const frame = pointFrame(plan, point);
  if (!frame) return makeFragment(point.id, 'points', 'point', []);
  const { u, width, mirrored } = laid(frame, point, plane);
  const { heightMm } = point.size;
  const z = frame.origin.z;
  const kind = pointKinds.get(point.kind);
  const edge = pointEdge(point, state);
  const at = (x: number, y: number): Vec => [u + (mirrored ? -x : x), z + y];
  const parts = kind
    ? kind.faceSymbol({ ...point.size, widthMm: width })
    : [{ draw: 'rect', x: -width / 2, y: 0, w: width, h: heightMm, fill: false } as const];
  const shown = state === 'strip' ? parts.filter((p) => p.draw !== 'letter') : parts;
  const appliance = kind?.group === 'appliance';
  const shownParts = appliance ? shown.filter((p) => p.draw !== 'letter') : shown;
  const { items, letters } = symbolItems(shownParts, at, edge, [width / 2, heightMm / 2], false);
  const box = { from: u - width / 2, upTo: u + width / 2, low: z, high: z + heightMm };
  const told: Wish = {
    w: 'name',
    at: at(0, heightMm / 2),
    text: state === 'strip' ? `${point.name}, out` : point.name,
    second: `base ${levelOf(plan, z, point.storey)}`,
    ring: rectangle(box, box.low, box.high),
    small: true,
  };
  const sizes = appliance && state !== 'strip' ? clearances(box, beside, point) : [];
  const clear = state === 'strip' ? [] : keepClear(point, 'front', at);
  return makeFragment(
    point.id,
    'points',
    'point',
    [...clear, ...items],
    [...letters, ...sizes, ...(appliance ? [told] : [])],
  );
}
