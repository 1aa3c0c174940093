import type { Box, Vec } from '../../drawing/display-list.ts';
import type { Camera } from '../../editor/editor-api.ts';

/** From a fitting as large as a hand to a terrace of houses. */
const NEAREST_MM_PER_PX = 0.2;
const FURTHEST_MM_PER_PX = 400;
/** What is fitted is never brought nearer than this: a short piece stays a short piece. */
const FIT_MM_PER_PX = 1.5;
/** Kept free about what is fitted, for words: left and right, over and under, px. */
const ROOM: Vec = [36, 84];

const held = (mmPerPx: number): number => Math.min(FURTHEST_MM_PER_PX, Math.max(NEAREST_MM_PER_PX, mmPerPx));

export function fittedTo(box: Box, width: number, height: number): Camera {
  const wide = Math.max(40, width - 2 * ROOM[0]);
  const high = Math.max(40, height - 2 * ROOM[1]);
  const wanted = Math.max((box.maxX - box.minX) / wide, (box.maxY - box.minY) / high, FIT_MM_PER_PX);
  return { centre: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2], mmPerPx: held(wanted) };
}

/** Nearer (over 1) or further; what lies under a place of the pane, px from its middle and y down, stays there. */
export function zoomedIn(camera: Camera, by: number, about: Vec = [0, 0]): Camera {
  const mmPerPx = held(camera.mmPerPx / by);
  const moved = camera.mmPerPx - mmPerPx;
  return { centre: [camera.centre[0] + about[0] * moved, camera.centre[1] - about[1] * moved], mmPerPx };
}

/** The drawing pushed by so many px, to the right and down. */
export const pushedBy = (camera: Camera, dx: number, dy: number): Camera => ({
  ...camera,
  centre: [camera.centre[0] - dx * camera.mmPerPx, camera.centre[1] + dy * camera.mmPerPx],
});

/** As it was where a box lies in the pane already; else moved so that its middle is in the middle. */
export function showing(camera: Camera, box: Box, width: number, height: number): Camera {
  const [x, y] = camera.centre;
  const [w, h] = [(width / 2 - 24) * camera.mmPerPx, (height / 2 - 24) * camera.mmPerPx];
  const inside = box.minX >= x - w && box.maxX <= x + w && box.minY >= y - h && box.maxY <= y + h;
  return inside ? camera : { ...camera, centre: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] };
}
