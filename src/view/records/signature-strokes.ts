/** The box a signature is written in, in its own numbers: as wide as the plan keeps it, whatever the screen. */
export const BOX_WIDE = 1000;
export const BOX_HIGH = 360;
/** Nearer than this to the last place, a place adds nothing that could be seen. */
const LEAST_STEP = 4;
/** As many numbers as one signature may hold. */
const MOST_NUMBERS = 6000;

export type Stroke = readonly number[];

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

const within = (n: number, most: number): number => Math.min(most, Math.max(0, Math.round(n)));

/** A place on the screen as numbers of the box, held to its edges. */
export function inBox(box: Box, clientX: number, clientY: number): readonly [number, number] {
  const scale = box.width > 0 ? BOX_WIDE / box.width : 0;
  return [within((clientX - box.left) * scale, BOX_WIDE), within((clientY - box.top) * scale, BOX_HIGH)];
}

/** A stroke gone on to a place; the same one where the place is no further. */
export function goOn(stroke: Stroke, [x, y]: readonly [number, number]): Stroke {
  const [lastX, lastY] = [stroke.at(-2), stroke.at(-1)];
  if (lastX !== undefined && lastY !== undefined && Math.hypot(x - lastX, y - lastY) < LEAST_STEP) return stroke;
  return [...stroke, x, y];
}

export const isFull = (strokes: readonly Stroke[]): boolean =>
  strokes.reduce((sum, s) => sum + s.length, 0) >= MOST_NUMBERS;

/** Path of a stroke; a tap is a dot. */
export function pathOf(stroke: Stroke): string {
  const places: string[] = [];
  for (let i = 0; i + 1 < stroke.length; i += 2) places.push(`${stroke[i]} ${stroke[i + 1]}`);
  const [first, ...rest] = places;
  return first === undefined ? '' : `M${first}L${(rest.length === 0 ? [first] : rest).join(' ')}`;
}
