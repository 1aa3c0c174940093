import { wallLength } from '../geometry/wall-frame.ts';
import type { Alive } from '../network/cases.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import { bodyPart } from './building/wall-bodies.ts';
import type { Fragment, LineStyle, View } from './display-list.ts';
import { faceOpening } from './face/face-opening.ts';
import { facePoint, onFace } from './face/face-point.ts';
import { makeFragment } from './fragments/fragment.ts';
import { jointFragment } from './fragments/joint.fragment.ts';
import { legFragment } from './fragments/leg.fragment.ts';
import { openingFragment } from './fragments/opening.fragment.ts';
import { pointFragment } from './fragments/point.fragment.ts';
import { riserFragment } from './fragments/riser.fragment.ts';
import { voidFragment } from './fragments/void.fragment.ts';
import { livesOf } from './fragments.ts';
import { PEN } from './look/tokens.ts';
import { type DrawnLeg, drawnLegNow } from './pipes/drawn-leg.ts';
import { jointOf } from './pipes/joints.ts';
import type { PipeState } from './pipes/leg-style.ts';
import { type FacePlane, facePlane, type Plane, planPlane } from './pipes/plane.ts';
import { risersOf } from './pipes/risers.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.wallEdge, dash: [], fit: false };

/** A thing that is only in the draft is new; the rest keeps the state it has in the plan the draft was made of. */
function stateIn(alive: Alive, id: string): PipeState {
  const state = alive.state(id);
  return state === 'there' || state === 'strip' ? state : 'new';
}

function pipesOf(draft: Plan, ids: ReadonlySet<string>, alive: Alive, plane: Plane): DrawnLeg[] {
  const found: DrawnLeg[] = [];
  for (const id of ids) {
    const leg = draft.legs[id];
    const stretch = draft.stretches[id];
    const pipe = leg ?? stretch;
    const drawn = pipe && drawnLegNow(draft, leg ? 'legs' : 'stretches', pipe, stateIn(alive, id), plane);
    if (drawn) found.push(drawn);
  }
  return found;
}

function pipeFragmentsNow(draft: Plan, legs: readonly DrawnLeg[], plane: Plane): Fragment[] {
  const at = new Map<string, DrawnLeg[]>();
  for (const leg of legs) {
    for (const vertex of new Set([leg.vertexA, leg.vertexB])) at.set(vertex, [...(at.get(vertex) ?? []), leg]);
  }
  const risers = risersOf(legs);
  const lines = legs.flatMap((leg): Fragment[] => {
    const riser = risers.get(leg);
    if (riser) return riser.owner === leg ? [riserFragment(draft, riser, plane, undefined, false, undefined)] : [];
    return [legFragment(leg, { spread: [undefined, undefined], trim: [0, 0], gaps: [], wishes: [] })];
  });
  const joints = [...at].flatMap(([vertex, meeting]) => {
    const joint = jointOf(vertex, meeting);
    const made =
      joint.is === 'tee' || joint.is === 'corner' ? jointFragment(vertex, vertex, joint, undefined) : undefined;
    return made ? [made] : [];
  });
  return [...lines, ...joints];
}

function wallNow(wall: Wall): Fragment {
  const fill = wall.sureness === 'seen' ? 'wall' : 'none';
  return makeFragment(wall.id, 'walls', 'wall', [
    { t: 'area', rings: [bodyPart(wall, 0, wallLength(wall))], fill, edge: EDGE },
  ]);
}

function partsOnPlan(draft: Plan, id: string, storey: string, alive: Alive): Fragment[] {
  const wall = draft.walls[id];
  if (wall) return wall.storey === storey ? [wallNow(wall)] : [];
  const opening = draft.openings[id];
  const host = opening && draft.walls[opening.wall];
  if (opening && host) return host.storey === storey ? [openingFragment(host, opening)] : [];
  const point = draft.points[id];
  if (point) return point.storey === storey ? [pointFragment(draft, point, stateIn(alive, id))] : [];
  const v = draft.voids[id];
  return v && v.storey === storey ? [voidFragment(v)] : [];
}

function partsOnFace(draft: Plan, id: string, face: FacePlane, alive: Alive): Fragment[] {
  const point = draft.points[id];
  if (point) return onFace(draft, point, face) ? [facePoint(draft, point, stateIn(alive, id), face, [])] : [];
  const opening = draft.openings[id];
  return opening && face.view.kind === 'face' && opening.wall === face.view.wall
    ? [faceOpening(draft, opening, face)]
    : [];
}

/**
 * Only what moves in a gesture, drawn from the draft without looking at anything else: the cost is that of `ids`, not of
 * the plan. Nothing is kept, nothing is spread or broken, and no labels are wished for that the still drawing places.
 */
export function liveFragments(
  plan: Plan,
  draft: Plan,
  view: View,
  chosen: Case,
  ids: ReadonlySet<string>,
): readonly Fragment[] {
  const alive = livesOf(plan, chosen);
  const face = view.kind === 'face' ? facePlane(draft, view.wall, view.side) : undefined;
  const plane = view.kind === 'plan' ? planPlane(view.storey) : face;
  if (!plane) return [];
  const parts = [...ids].flatMap((id) =>
    face ? partsOnFace(draft, id, face, alive) : partsOnPlan(draft, id, plane.storey, alive),
  );
  return [...parts, ...pipeFragmentsNow(draft, pipesOf(draft, ids, alive, plane), plane)];
}
