import type { Editor } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { ceilingZ, floorZ } from '../../geometry/heights.ts';
import { lookedAt } from './looked-at.ts';

/** Part of the pane's height that floor to ceiling takes, with the slabs above and below. */
const FILLS = 0.74;
/** The end of a wall comes so near to the edge of its pane and no nearer, as part of half the pane. */
const WITHIN = 0.88;
/** The wall lies this far below the top of the plan, px. */
const BELOW_TOP_PX = 70;

/**
 * When a face has been folded up: so near that floor to ceiling fills its pane, at the part of the wall that is looked
 * at, with the plan at the same scale and the wall at its top.
 */
export function fitFace(editor: Editor): void {
  const state = editor.store.getState();
  const { plan, panes } = state;
  const { face } = panes;
  if (face?.view.kind !== 'face') return;
  const wall = plan.walls[face.view.wall];
  const [plane, below] = [workPlane(plan, face.view), workPlane(plan, panes.plan.view)];
  const floor = wall && floorZ(plan, wall.storey);
  const ceiling = wall && ceilingZ(plan, wall.storey);
  if (!wall || !plane || !below || floor === undefined || ceiling === undefined) return;
  const mmPerPx = (ceiling - floor) / (face.height * FILLS);
  const length = Math.hypot(wall.a.x - wall.b.x, wall.a.y - wall.b.y);
  const half = (face.width * mmPerPx) / 2;
  const looked = lookedAt(state, length);
  const across = length < 2 * half ? length / 2 : Math.min(Math.max(looked, half * WITHIN), length - half * WITHIN);
  const [x, y] = below.onto(plane.place([across, 0], 0));
  editor.setCamera('plan', { centre: [x, y - (panes.plan.height / 2 - BELOW_TOP_PX) * mmPerPx], mmPerPx });
  editor.setCamera('face', { centre: [across, (floor + ceiling) / 2], mmPerPx });
}
