import type { Vec } from '../../drawing/display-list.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { dot, sub } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { EditorState } from '../editor-api.ts';
import { distanceTo } from '../hit/shapes.ts';
import { around, viewIndex } from '../hit/view-index.ts';

/** A place on a wall: distance along its centreline from `a`, and the side the pointer is on. */
export interface OnWall {
  readonly wall: Wall;
  readonly side: 'left' | 'right';
  readonly alongMm: number;
  readonly lengthMm: number;
}

const AMID_MM = 10;
const round = (mm: number): number => Math.round(mm / AMID_MM) * AMID_MM;

export function onWall(wall: Wall, x: number, y: number): OnWall {
  const { along, lengthMm } = wallSide(wall, 'left');
  const d = sub({ x, y }, wall.a);
  const s = Math.min(lengthMm, Math.max(0, dot(d, along)));
  const side = along.x * d.y - along.y * d.x >= 0 ? 'left' : 'right';
  return { wall, side, alongMm: Math.min(round(s), lengthMm), lengthMm };
}

/** Nearest standing wall of the floor within reach of a place of the plan as it is seen. */
export function nearestWall(state: EditorState, at: Vec, reachMm: number): OnWall | undefined {
  const plan: Plan = state.plan;
  const index = viewIndex(plan, state.panes.plan.view, state.chosen);
  const walls = (index?.near(around(at, reachMm)) ?? [])
    .filter((e) => e.kind === 'wall' && !e.gone)
    .map((e) => ({ wall: plan.walls[e.id], away: distanceTo(e.shape, at) }))
    .filter((w) => w.away <= reachMm)
    .sort((a, b) => a.away - b.away);
  const wall = walls[0]?.wall;
  const place = index?.plane.place(at, 0);
  return wall && place && onWall(wall, place.x, place.y);
}
