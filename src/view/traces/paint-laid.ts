import type { Frame } from '../../drawing/paint/frame.ts';
import type { TracePlace } from '../../geometry/trace-place.ts';
import type { Laid } from './rectify.ts';

const RADIANS = Math.PI / 180;

/** Paints a picture where it lies in the plane, turned with the view, as pale as it was set. */
export function paintLaid(
  paint: CanvasRenderingContext2D,
  laid: Laid,
  place: Pick<TracePlace, 'x' | 'y' | 'angleDeg' | 'opacity'>,
  frame: Frame,
  turnDeg: number,
): void {
  paint.save();
  paint.globalAlpha = place.opacity;
  paint.translate(frame.origin[0], frame.origin[1]);
  paint.scale(frame.perMm, -frame.perMm);
  paint.rotate(turnDeg * RADIANS);
  paint.translate(place.x, place.y);
  paint.rotate(place.angleDeg * RADIANS);
  // The plane's y runs up and a picture's down.
  paint.scale(1, -1);
  paint.drawImage(laid.bitmap, laid.minX, -laid.maxY, laid.maxX - laid.minX, laid.maxY - laid.minY);
  paint.restore();
}
