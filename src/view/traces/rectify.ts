import { project } from '../../geometry/quad.ts';
import { squaredBox, squaredOf, type TracePlace } from '../../geometry/trace-place.ts';

/** A picture made ready to be laid: its bitmap, and the part of its own frame that the bitmap covers, mm. */
export interface Laid {
  readonly bitmap: CanvasImageSource;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** About how many pixels a squared picture gets: as sharp as the photo, and quick on an old tablet. */
const MOST_PIXELS = 1_500_000;
const BYTES = 4;

/** A picture as it was taken, at the scale it was given. */
export function asTaken(bitmap: ImageBitmap, place: TracePlace): Laid {
  return { bitmap, minX: 0, minY: 0, maxX: bitmap.width * place.mmPerPixel, maxY: bitmap.height * place.mmPerPixel };
}

/** A photo seen straight on: every place of the rectangle's plane fetched from where the photo shows it. */
export function squaredUp(bitmap: ImageBitmap, place: TracePlace): Laid | null {
  const squared = squaredOf(place);
  const box = squaredBox(place, bitmap);
  if (!squared || !box) return null;
  const [wide, high] = [box.maxX - box.minX, box.maxY - box.minY];
  const perPixel = Math.sqrt((wide * high) / Math.min(MOST_PIXELS, bitmap.width * bitmap.height * 2));
  const [width, height] = [Math.max(1, Math.round(wide / perPixel)), Math.max(1, Math.round(high / perPixel))];
  const from = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
  const to = new OffscreenCanvas(width, height);
  const onto = to.getContext('2d');
  if (!from || !onto) return null;
  from.drawImage(bitmap, 0, 0);
  const source = new Uint32Array(from.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
  const made = new Uint32Array(width * height);
  for (let row = 0; row < height; row++) {
    const y = box.maxY - ((row + 0.5) * high) / height;
    for (let column = 0; column < width; column++) {
      const at = project(squared.toPixel, { x: box.minX + ((column + 0.5) * wide) / width, y });
      if (!at || at.x < 0 || at.y < 0 || at.x >= bitmap.width || at.y >= bitmap.height) continue;
      made[row * width + column] = source[Math.floor(at.y) * bitmap.width + Math.floor(at.x)] ?? 0;
    }
  }
  const bytes = new Uint8ClampedArray(made.buffer, 0, width * height * BYTES);
  onto.putImageData(new ImageData(bytes, width, height), 0, 0);
  return { bitmap: to, ...box };
}
