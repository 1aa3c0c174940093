import { roomAt } from '../../geometry/rooms.ts';
import { dot } from '../../geometry/vec.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { type Box, boxWalls, outOfWalls } from '../commands/box-walls.ts';
import type { EditorState, InHand } from '../editor-api.ts';
import { type WorkPlane, wayInHouse, workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';

/** Across and up the sheet: +1 right and up, -1 left and down. */
export interface Quarter {
  readonly across: 1 | -1;
  readonly up: 1 | -1;
}

const QUARTERS: readonly Quarter[] = [
  { across: 1, up: 1 },
  { across: 1, up: -1 },
  { across: -1, up: 1 },
  { across: -1, up: -1 },
];
/** So far into a quarter of a corner is looked whether something is there. */
const LOOK_MM = 400;

export function standingWalls({ plan, chosen, panes }: EditorState): Wall[] {
  const alive = aliveIn(plan, chosen);
  const storey = storeyOf(panes);
  return Object.values(plan.walls).filter((w) => w.storey === storey && alive.has('walls', w.id));
}

const spaceAt = (state: EditorState, p: Xy) => {
  const alive = aliveIn(state.plan, state.chosen);
  return roomAt(state.plan, storeyOf(state.panes), p, { has: (id) => alive.has('walls', id) });
};

const plus = (plane: WorkPlane, p: Xy, across: number, up: number): Xy => {
  const by = wayInHouse(plane, [across, up]);
  return { x: p.x + by.x, y: p.y + by.y };
};

/** The first quarter about a corner that is in no closed space yet: there the next room goes. */
export function freeQuarter(state: EditorState, corner: Xy): Quarter {
  const plane = workPlane(state.plan, state.panes.plan.view);
  const free = plane
    ? QUARTERS.find((q) => !spaceAt(state, plus(plane, corner, q.across * LOOK_MM, q.up * LOOK_MM)))
    : undefined;
  return free ?? { across: 1, up: 1 };
}

/** How far the faces of the room lie within what was told. */
const within = ({ sizes, wallThicknessMm }: InHand): number =>
  sizes === 'inside' ? 0 : sizes === 'outside' ? wallThicknessMm : wallThicknessMm / 2;

export interface RoomBox {
  readonly inside: Box;
  /** Clear sizes across and up the sheet. */
  readonly acrossMm: number;
  readonly upMm: number;
  /** How far a standing wall is from where the box has it. */
  readonly offMm: number;
}

/** The inside of a room told by two places, or by one and two sizes from there. Undefined where it has no inside. */
export function roomBox(
  state: EditorState,
  from: Xy,
  to: { readonly place: Xy } | { readonly acrossMm: number; readonly upMm: number },
): RoomBox | undefined {
  const plane = workPlane(state.plan, state.panes.plan.view);
  if (!plane) return undefined;
  const walls = standingWalls(state);
  const on = (p: Xy) => plane.onto({ ...p, z: 0 });
  const [across, up] = [wayInHouse(plane, [1, 0]), wayInHouse(plane, [0, 1])];
  const [fx, fy] = on(from);
  const [tx, ty] = 'place' in to ? on(to.place) : [fx + to.acrossMm, fy + to.upMm];
  const way: Quarter = { across: tx < fx ? -1 : 1, up: ty < fy ? -1 : 1 };
  const into = wayInHouse(plane, [way.across, way.up]);
  const near = outOfWalls(from, into, walls);
  const heldAcross = near.held.some((n) => Math.abs(dot(n, across)) > HELD);
  const heldUp = near.held.some((n) => Math.abs(dot(n, up)) > HELD);
  const [nx, ny] = on(near.at);
  const inset = within(state.inHand);
  const x0 = nx + (heldAcross ? 0 : way.across * inset);
  const y0 = ny + (heldUp ? 0 : way.up * inset);
  let [x1, y1] = [tx - way.across * inset, ty - way.up * inset];
  if ('place' in to) {
    const far = outOfWalls(to.place, { x: -into.x, y: -into.y }, walls);
    const [gx, gy] = on(far.at);
    if (far.held.some((n) => Math.abs(dot(n, across)) > HELD)) x1 = gx;
    if (far.held.some((n) => Math.abs(dot(n, up)) > HELD)) y1 = gy;
  } else {
    // A size is told from the face, wherever in the wall the corner was tapped.
    x1 += heldAcross ? nx - fx : 0;
    y1 += heldUp ? ny - fy : 0;
  }
  if ((x1 - x0) * way.across <= 0 || (y1 - y0) * way.up <= 0) return undefined;
  const corner = (x: number, y: number): Xy => {
    const p = plane.place([x, y], 0);
    return { x: p.x, y: p.y };
  };
  const inside: Box = [corner(x0, y0), corner(x1, y0), corner(x1, y1), corner(x0, y1)];
  const { offMm } = boxWalls(inside, walls, state.inHand.wallThicknessMm);
  return { inside, acrossMm: Math.abs(x1 - x0), upMm: Math.abs(y1 - y0), offMm };
}

/** Cosine from which on a wall stands square to a way. */
const HELD = 0.9;
