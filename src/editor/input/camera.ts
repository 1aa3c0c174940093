import type { Box, Vec } from '../../drawing/display-list.ts';
import type { Camera, Pane } from '../editor-api.ts';
import type { Margins } from './fit-box.ts';

/** From a hand's breadth across the pane to a street: past these nothing can be read, and dashes would freeze. */
const LEAST_MM_PER_PX = 0.02;
const MOST_MM_PER_PX = 400;
/** A wheel notch is about 100 px of delta; this makes one notch a fifth nearer or further. */
const ZOOM_PER_DELTA = 0.0018;
const EVEN: Margins = { left: 40, right: 40, top: 40, bottom: 40 };

const clamp = (n: number, lo: number, hi: number): number => Math.min(hi, Math.max(lo, n));

/** Where a pixel of the pane lies in the view's plane, mm. */
export function toPlane(pane: Pane, x: number, y: number): Vec {
  const { centre, mmPerPx } = pane.camera;
  return [centre[0] + (x - pane.width / 2) * mmPerPx, centre[1] - (y - pane.height / 2) * mmPerPx];
}

/** Where a place of the view's plane lies in the pane, px. */
export function toPixels(pane: Pane, at: Vec): Vec {
  const { centre, mmPerPx } = pane.camera;
  return [(at[0] - centre[0]) / mmPerPx + pane.width / 2, pane.height / 2 - (at[1] - centre[1]) / mmPerPx];
}

/** Moves the paper by so many pixels: what was under the finger stays under it. */
export function panned(camera: Camera, dx: number, dy: number): Camera {
  return { ...camera, centre: [camera.centre[0] - dx * camera.mmPerPx, camera.centre[1] + dy * camera.mmPerPx] };
}

/** Brings the paper `factor` times nearer; the place under (x, y) stays there. */
export function zoomed(pane: Pane, x: number, y: number, factor: number): Camera {
  const mmPerPx = clamp(pane.camera.mmPerPx / factor, LEAST_MM_PER_PX, MOST_MM_PER_PX);
  const [px, py] = toPlane(pane, x, y);
  return { centre: [px - (x - pane.width / 2) * mmPerPx, py + (y - pane.height / 2) * mmPerPx], mmPerPx };
}

export const wheelFactor = (deltaY: number, ctrl: boolean): number =>
  Math.exp(-clamp(deltaY, -600, 600) * ZOOM_PER_DELTA * (ctrl ? 4 : 1));

/** A camera that shows the whole box with its margins. An empty or endless box leaves the camera as it is. */
export function fitted(pane: Pane, box: Box | null, margins: Margins = EVEN): Camera {
  if (!box || !Number.isFinite(box.maxX - box.minX) || box.maxX < box.minX || pane.width <= 0) return pane.camera;
  const { left, right, top, bottom } = margins;
  const width = Math.max(pane.width - left - right, 50);
  const height = Math.max(pane.height - top - bottom, 50);
  const wanted = Math.max((box.maxX - box.minX) / width, (box.maxY - box.minY) / height, 1);
  const mmPerPx = clamp(wanted, LEAST_MM_PER_PX, MOST_MM_PER_PX);
  const [dx, dy] = [(right - left) / 2, (bottom - top) / 2];
  return {
    centre: [(box.minX + box.maxX) / 2 + dx * mmPerPx, (box.minY + box.maxY) / 2 - dy * mmPerPx],
    mmPerPx,
  };
}
