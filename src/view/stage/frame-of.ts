import type { Vec } from '../../drawing/display-list.ts';
import type { Frame } from '../../drawing/paint/frame.ts';
import type { Camera, Pane } from '../../editor/editor-api.ts';
import { look } from '../look/tokens.ts';

/** The painter's frame of a pane as its camera sees it: px, y down, the camera's centre in the middle. */
export function frameOf(pane: Pick<Pane, 'camera' | 'width' | 'height'>): Frame {
  const { camera, width, height } = pane;
  const perMm = 1 / camera.mmPerPx;
  return {
    perMm,
    perPaperMm: look.screen.pxPerMm,
    origin: [width / 2 - camera.centre[0] * perMm, height / 2 + camera.centre[1] * perMm],
    turnDeg: 0,
    leastPen: look.screen.leastPenPx,
    medium: 'screen',
  };
}

/** Where a place of the view's plane is shown in a pane, px from its top left corner; `offsetMm` in paper mm, y up. */
export function toPx(pane: Pick<Pane, 'camera' | 'width' | 'height'>, at: Vec, offsetMm: Vec = [0, 0]): Vec {
  const frame = frameOf(pane);
  return [
    frame.origin[0] + at[0] * frame.perMm + offsetMm[0] * frame.perPaperMm,
    frame.origin[1] - at[1] * frame.perMm - offsetMm[1] * frame.perPaperMm,
  ];
}

/**
 * How a picture drawn with one camera has to be moved and scaled to lie where another camera wants it, while it is not
 * drawn again: for the length of a pan or a pinch.
 */
export function shiftBetween(
  drawn: Camera,
  now: Camera,
  width: number,
  height: number,
): { readonly x: number; readonly y: number; readonly scale: number } {
  const scale = drawn.mmPerPx / now.mmPerPx;
  const dx = (drawn.centre[0] - now.centre[0]) / now.mmPerPx;
  const dy = (now.centre[1] - drawn.centre[1]) / now.mmPerPx;
  return { x: width / 2 - (width / 2) * scale + dx, y: height / 2 - (height / 2) * scale + dy, scale };
}
