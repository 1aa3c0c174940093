import { type Box, PAINTER_GROUPS, type PainterGroup } from '../../drawing/display-list.ts';
import type { Pane } from '../../editor/editor-api.ts';

/** Groups of the layer that rarely changes, and of the one that changes with every commit or choice. */
export const STILL_GROUPS: readonly PainterGroup[] = ['trace', 'ground', 'void', 'room', 'wall', 'opening', 'joist'];
export const WORK_GROUPS: readonly PainterGroup[] = PAINTER_GROUPS.filter((g) => !STILL_GROUPS.includes(g));

/** Labels and marks keep their size in px and reach past the box of what they belong to. */
const REACH_PX = 160;

export function seenBox(pane: Pick<Pane, 'camera' | 'width' | 'height'>, reachPx = REACH_PX): Box {
  const { centre, mmPerPx } = pane.camera;
  const w = (pane.width / 2 + reachPx) * mmPerPx;
  const h = (pane.height / 2 + reachPx) * mmPerPx;
  return { minX: centre[0] - w, minY: centre[1] - h, maxX: centre[0] + w, maxY: centre[1] + h };
}

/** True while two sets hold the same ids: a drag hands out a new set with every frame. */
export function sameIds(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const id of a) if (!b.has(id)) return false;
  return true;
}
