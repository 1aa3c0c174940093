import { wallLength } from '../geometry/wall-frame.ts';
import type { Alive } from '../network/cases.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import { bodyPart } from './building/wall-bodies.ts';
import type { Fragment, LineStyle, View } from './display-list.ts';
import { faceOpening } from './face/face-opening.ts';
import { facePoint, onFace } from './face/face-point.ts';
import { faceVoid } from './face/face-void.ts';
import { boxAround, makeFragment } from './fragments/fragment.ts';
import { openingFragment } from './fragments/opening.fragment.ts';
import { pipeFragments } from './fragments/pipe-fragments.ts';
import { pointFragment } from './fragments/point.fragment.ts';
import { turnedFragment, turnedProbe } from './fragments/turned.ts';
import { voidFragment } from './fragments/void.fragment.ts';
import { livesOf, pipesNear } from './fragments.ts';
import { PEN } from './look/tokens.ts';
import { type DrawnLeg, drawnLegNow } from './pipes/drawn-leg.ts';
import type { PipeState } from './pipes/leg-style.ts';
import { meeting } from './pipes/pipes-in-view.ts';
import { type FacePlane, facePlane, type Plane, planPlane, turnOf } from './pipes/plane.ts';
import { wallProbe } from './pipes/wall-probe.ts';

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

/** Pipes that move pass this near to others before they have a say in how these are drawn. */
const NEAR_MM = 200;
const NO_VOIDS = () => new Map<DrawnLeg, string>();

/** The pipes that stay, as far as those that move come near them. */
function staying(
  plan: Plan,
  plane: Plane,
  chosen: Case,
  legs: readonly DrawnLeg[],
  ids: ReadonlySet<string>,
): DrawnLeg[] {
  const found = new Set<DrawnLeg>();
  for (const { a, b } of legs) {
    for (const leg of pipesNear(plan, plane.view, chosen, boxAround([a, b]), NEAR_MM)) {
      if (!ids.has(leg.record.id)) found.add(leg);
    }
  }
  return [...found];
}

function pipeFragmentsNow(
  draft: Plan,
  legs: readonly DrawnLeg[],
  stay: readonly DrawnLeg[],
  plane: Plane,
  ids: ReadonlySet<string>,
): Fragment[] {
  if (legs.length === 0) return [];
  const ground = { wall: turnedProbe(wallProbe(draft, plane.storey), turnOf(plane.view)), voids: NO_VOIDS };
  const { fragments } = pipeFragments(draft, plane, meeting([...stay, ...legs]), ground, { legs: new Set(legs) });
  // The bar at an end that leads nowhere is drawn with what stays, unless it moves too.
  const isEnd = (f: Fragment): boolean => f.items.some((i) => i.t === 'mark' && i.mark === 'openEnd');
  return fragments.filter((f) => f.map !== 'nodes' || ids.has(f.id) || !isEnd(f));
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
  const v = draft.voids[id];
  if (v) return v.storey === face.storey ? [faceVoid(draft, v, face)] : [];
  const opening = draft.openings[id];
  return opening && face.view.kind === 'face' && opening.wall === face.view.wall
    ? [faceOpening(draft, opening, face)]
    : [];
}

/**
 * Only what moves in a gesture, drawn from the draft: spread in its banks and broken where something passes in front, as
 * it will be when it comes to rest. The cost is that of `ids` and of the pipes they come near, not of the plan. Nothing is
 * kept, and what stays is not drawn again.
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
  const plane = view.kind === 'plan' ? planPlane(view.storey, view.turnDeg) : face;
  if (!plane) return [];
  const parts = [...ids].flatMap((id) =>
    face
      ? partsOnFace(draft, id, face, alive)
      : partsOnPlan(draft, id, plane.storey, alive).map((f) => turnedFragment(f, turnOf(view))),
  );
  const legs = pipesOf(draft, ids, alive, plane);
  return [...parts, ...pipeFragmentsNow(draft, legs, staying(plan, plane, chosen, legs, ids), plane, ids)];
}
