import { facePlane } from '../geometry/face-plane.ts';
import { wallSide } from '../geometry/hosting.ts';
import type { Plan } from '../plan/plan.ts';
import type { Wall } from '../plan/records/building.ts';
import type { Camera, Pane, Panes } from './editor-api.ts';
import { workPlane } from './input/work-plane.ts';
import { planView, storeyOf, turnOf } from './panes.ts';

type Side = 'left' | 'right';

/** A camera that would move by less than this stays the very same: nothing is drawn anew for a rounding. */
const STILL_MM = 1e-6;

/** Degrees by which a plan is turned to lie under a side of a wall: its right hand goes across, its room lies below. */
export function turnUnder(wall: Wall, side: Side): number {
  const { right } = facePlane(wall, side);
  const deg = (Math.atan2(-right.y, right.x) * 180) / Math.PI;
  return deg === -180 ? 180 : deg || 0;
}

/** The wall's face at the scale of the plan, from floor to ceiling in its middle. Undefined where the wall is gone. */
function facePane(plan: Plan, panes: Panes, wall: string, side: Side): Pane | undefined {
  const record = plan.walls[wall];
  const storey = record && plan.storeys[record.storey];
  if (!record || !storey) return undefined;
  const centre = [wallSide(record, side).lengthMm / 2, storey.floorMm + storey.ceilingMm / 2] as const;
  const { width, height } = panes.face ?? panes.plan;
  const camera = { centre, mmPerPx: panes.plan.camera.mmPerPx };
  return { view: { kind: 'face', wall, side }, camera, width, height };
}

const nearly = (a: Camera, b: Camera): boolean =>
  Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]) < STILL_MM && a.mmPerPx === b.mmPerPx;

const withCamera = (pane: Pane, camera: Camera): Pane => (nearly(pane.camera, camera) ? pane : { ...pane, camera });

/**
 * After a camera was moved: what lies under the face is seen straight under it, at one scale, so that a pipe can be
 * followed straight up. The pane that was moved leads.
 */
export function alignedTo(plan: Plan, panes: Panes, leads: 'plan' | 'face'): Panes {
  const { plan: below, face } = panes;
  const [under, over] = [workPlane(plan, below.view), face && workPlane(plan, face.view)];
  if (!face || !under || !over) return panes;
  const [x0] = under.onto(over.place([0, 0], 0));
  const [lead, other, off] = leads === 'face' ? [face, below, x0] : [below, face, -x0];
  const camera: Camera = {
    centre: [lead.camera.centre[0] + off, other.camera.centre[1]],
    mmPerPx: lead.camera.mmPerPx,
  };
  const moved = withCamera(other, camera);
  if (moved === other) return panes;
  return leads === 'face' ? { ...panes, plan: moved } : { ...panes, face: moved };
}

/** The plan turned by so much about the place in its middle. */
function turnedTo(plan: Plan, pane: Pane, storey: string, turnDeg: number): Pane {
  const view = planView(storey, turnDeg);
  const [before, after] = [workPlane(plan, pane.view), workPlane(plan, view)];
  if (!before || !after) return pane;
  const centre = after.onto(before.place(pane.camera.centre, 0));
  return { ...pane, view, camera: { ...pane.camera, centre } };
}

/** The wall is folded down: the plan is seen as it was before. */
export function foldedDown(panes: Panes): Panes {
  const { plan: pane, flat } = panes;
  if (!panes.face && !flat) return panes.active === 'plan' ? panes : { ...panes, active: 'plan' };
  const view = pane.view.kind === 'plan' && pane.view.turnDeg ? planView(pane.view.storey) : pane.view;
  return { plan: { ...pane, view, camera: flat ?? pane.camera }, face: null, active: 'plan', flat: null };
}

/**
 * After the plan was changed: a folded-up wall that was turned or moved has its plan laid under it again, one that is
 * gone is folded down. The very same panes where nothing has to move.
 */
export function keptUnder(plan: Plan, panes: Panes): Panes {
  const view = panes.face?.view;
  if (view?.kind !== 'face') return panes;
  const wall = plan.walls[view.wall];
  if (!wall || !plan.storeys[wall.storey]) return foldedDown(panes);
  const turnDeg = turnUnder(wall, view.side);
  const same = turnOf(panes) === turnDeg;
  const pane = same ? panes.plan : turnedTo(plan, panes.plan, storeyOf(panes), turnDeg);
  return alignedTo(plan, same ? panes : { ...panes, plan: pane }, 'plan');
}

/** A side of a wall folded up out of the plan, which is turned to lie under it. As `foldedDown` where the wall is gone. */
export function foldedUp(plan: Plan, panes: Panes, wall: string, side: Side): Panes {
  const face = facePane(plan, panes, wall, side);
  if (!face) return foldedDown(panes);
  return keptUnder(plan, { ...panes, face, active: 'face', flat: panes.flat ?? panes.plan.camera });
}
