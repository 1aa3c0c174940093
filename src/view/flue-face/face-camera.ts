import type { Box, Vec } from '../../drawing/display-list.ts';
import type { Camera } from '../../editor/editor-api.ts';

/** From a hand's breadth of wall to a whole terrace. */
const NEAREST_MM_PER_PX = 0.5;
const FURTHEST_MM_PER_PX = 80;

const held = (mmPerPx: number): number => Math.min(FURTHEST_MM_PER_PX, Math.max(NEAREST_MM_PER_PX, mmPerPx));

/** All of a box in a pane of a size, with so many px free beside and over it. */
export function cameraOn(box: Box, width: number, height: number, margin: Vec): Camera {
  const wide = Math.max(1, width - 2 * margin[0]);
  const high = Math.max(1, height - 2 * margin[1]);
  const mmPerPx = held(Math.max((box.maxX - box.minX) / wide, (box.maxY - box.minY) / high));
  return { centre: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2], mmPerPx };
}

/** Nearer (over 1) or further; what lies under a place of the pane, px from its middle and y down, stays there. */
export function zoomed(camera: Camera, by: number, about: Vec = [0, 0]): Camera {
  const mmPerPx = held(camera.mmPerPx / by);
  const [x, y] = camera.centre;
  const moved = camera.mmPerPx - mmPerPx;
  return { centre: [x + about[0] * moved, y - about[1] * moved], mmPerPx };
}

/** The drawing pushed by so many px, to the right and down. */
export function pushed(camera: Camera, dx: number, dy: number): Camera {
  const [x, y] = camera.centre;
  return { ...camera, centre: [x - dx * camera.mmPerPx, y + dy * camera.mmPerPx] };
}

/** As it was, where a box already lies in the pane; else moved to its middle, at the same scale. */
export function broughtInto(camera: Camera, box: Box, width: number, height: number): Camera {
  const [x, y] = camera.centre;
  const [w, h] = [(width / 2) * camera.mmPerPx, (height / 2) * camera.mmPerPx];
  const inside = box.minX >= x - w && box.maxX <= x + w && box.minY >= y - h && box.maxY <= y + h;
  return inside ? camera : { ...camera, centre: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] };
}
