import { floorZ, resolveHeight } from '../../geometry/heights.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { PlaceArg } from '../commands/place-arg.ts';
import type { Pick } from '../input/pick.ts';
import type { WorkPlane } from '../input/work-plane.ts';

export interface Route {
  /** What the command is told, one place to a leg. */
  readonly path: readonly PlaceArg[];
  /** The same in space, with the start before it. */
  readonly pts: readonly Xyz[];
  /** What it goes along, or why it does not. */
  readonly word?: string;
  /** Where a run that begins here is to begin instead. */
  readonly start?: PlaceArg;
}

export interface RouteFrame {
  readonly plan: Plan;
  readonly plane: WorkPlane;
  readonly storey: string;
  readonly height: HeightRef;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < COINCIDENT_MM;
const same = (a: Xyz, b: Xyz): boolean => distance3(a, b) < COINCIDENT_MM;

export function free(frame: RouteFrame, at: Xyz): PlaceArg {
  const { plan, storey, height } = frame;
  const inHand = resolveHeight(plan, height);
  const kept: HeightRef =
    inHand && near(inHand.z, at.z) ? height : { from: 'floor', of: storey, mm: at.z - (floorZ(plan, storey) ?? 0) };
  return { at: 'free', storey, x: at.x, y: at.y, height: kept };
}

export function placeOfPick(frame: RouteFrame, pick: Pick): PlaceArg {
  const { target } = pick;
  if (target?.is === 'connection') return { at: 'connection', point: target.point, connection: target.connection };
  if (target?.is === 'node') return { at: 'node', node: target.node };
  if (target?.is === 'leg') return { at: 'leg', leg: target.leg, alongMm: target.alongMm };
  return free(frame, pick.at);
}

/** In plan a pipe travels at the height in hand: it rises or drops first, and again at its end where a tail is elsewhere. */
function cornersInPlan(frame: RouteFrame, from: Xyz, to: Xyz): Xyz[] {
  const z = resolveHeight(frame.plan, frame.height)?.z ?? from.z;
  if (near(from.x, to.x) && near(from.y, to.y)) return [];
  return [
    { ...from, z },
    { ...to, z },
  ];
}

/** On a face a pipe travels at the stand-off it is at, and goes in or out at its end. */
function cornersOnFace(frame: RouteFrame, from: Xyz, to: Xyz): Xyz[] {
  return [frame.plane.place(frame.plane.onto(to), frame.plane.depth(from))];
}

/** From the last place to the pick: the legs in between and the last, without those that have no length. */
export function routeTo(frame: RouteFrame, from: Xyz, pick: Pick): Route {
  const corners =
    frame.plane.kind === 'plan' ? cornersInPlan(frame, from, pick.at) : cornersOnFace(frame, from, pick.at);
  const pts: Xyz[] = [from];
  const path: PlaceArg[] = [];
  for (const corner of corners) {
    const last = pts.at(-1) ?? from;
    if (same(last, corner) || same(corner, pick.at)) continue;
    pts.push(corner);
    path.push(free(frame, corner));
  }
  if (!same(pts.at(-1) ?? from, pick.at) || pick.target) {
    pts.push(pick.at);
    path.push(placeOfPick(frame, pick));
  }
  return { path, pts };
}
