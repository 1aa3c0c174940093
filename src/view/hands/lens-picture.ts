import { LENS, NEARER } from './lens-place.ts';

/** More device pixels than this only cost memory. */
const MOST_PIXEL_RATIO = 2;

/**
 * What lies about a place of the page, drawn from the layers as they are: nothing of them is painted anew. `x`, `y` in px of
 * the page.
 */
export function paintLens(into: HTMLCanvasElement, layers: Iterable<HTMLCanvasElement>, x: number, y: number): void {
  const ctx = into.getContext('2d');
  if (!ctx) return;
  const ratio = Math.min(devicePixelRatio, MOST_PIXEL_RATIO);
  const [width, height] = [Math.round(LENS.width * ratio), Math.round(LENS.drawing * ratio)];
  if (into.width !== width || into.height !== height) Object.assign(into, { width, height });
  else ctx.clearRect(0, 0, width, height);
  const [seenWide, seenHigh] = [LENS.width / NEARER, LENS.drawing / NEARER];
  for (const layer of layers) {
    const box = layer.getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    const [sx, sy] = [layer.width / box.width, layer.height / box.height];
    ctx.drawImage(
      layer,
      (x - seenWide / 2 - box.left) * sx,
      (y - seenHigh / 2 - box.top) * sy,
      seenWide * sx,
      seenHigh * sy,
      0,
      0,
      width,
      height,
    );
  }
}
