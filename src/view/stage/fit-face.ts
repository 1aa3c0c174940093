import type { Editor } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { ceilingZ, floorZ } from '../../geometry/heights.ts';

/** Part of the pane's height that floor to ceiling takes, with the slabs above and below. */
const FILLS = 0.74;
/** The wall lies this far below the top of the plan, px. */
const BELOW_TOP_PX = 70;

/**
 * When a face has been folded up: so near that floor to ceiling fills its pane, at the part of the wall that was in the
 * middle, with the plan at the same scale and the wall at its top.
 */
export function fitFace(editor: Editor): void {
  const { plan, panes } = editor.store.getState();
  const { face } = panes;
  if (face?.view.kind !== 'face') return;
  const wall = plan.walls[face.view.wall];
  const plane = workPlane(plan, face.view);
  const floor = wall && floorZ(plan, wall.storey);
  const ceiling = wall && ceilingZ(plan, wall.storey);
  if (!wall || !plane || floor === undefined || ceiling === undefined) return;
  const mmPerPx = (ceiling - floor) / (face.height * FILLS);
  const length = Math.hypot(wall.a.x - wall.b.x, wall.a.y - wall.b.y);
  const half = (face.width * mmPerPx) / 2;
  const [x, y] = panes.plan.camera.centre;
  const [looked] = plane.onto({ x, y, z: floor });
  const across = length < 2 * half ? length / 2 : Math.min(Math.max(looked, half * 0.9), length - half * 0.9);
  const at = plane.place([across, 0], 0);
  editor.setCamera('plan', {
    centre: [at.x, at.y - (panes.plan.height / 2 - BELOW_TOP_PX) * mmPerPx],
    mmPerPx,
  });
  editor.setCamera('face', { centre: [across, (floor + ceiling) / 2], mmPerPx });
}
