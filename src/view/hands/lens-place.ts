/** Size of the lens, px: the drawing in it and the line of words under that. */
export const LENS = { width: 176, drawing: 124, words: 30 } as const;
export const LENS_HEIGHT = LENS.drawing + LENS.words;
/** So many times nearer than the drawing itself. */
export const NEARER = 2;
/** Between the place touched and the lens: a fingertip, and the hand behind it where the lens lies beside it. */
const ABOVE_PX = 52;
const BESIDE_PX = 64;
const EDGE_PX = 8;

const clamp = (n: number, lo: number, hi: number): number => Math.max(lo, Math.min(n, hi));

interface Room {
  readonly width: number;
  readonly height: number;
}

/**
 * Where the lens stands for a finger at (x, y), px of the room it is in: above the finger, and where there is no room beside
 * it, on the side the drawing hand does not cover.
 */
export function lensPlace(
  x: number,
  y: number,
  room: Room,
  drawsWith: 'left' | 'right',
): { readonly left: number; readonly top: number } {
  const above = y - ABOVE_PX - LENS_HEIGHT;
  const mostLeft = Math.max(EDGE_PX, room.width - LENS.width - EDGE_PX);
  if (above >= EDGE_PX) return { left: clamp(x - LENS.width / 2, EDGE_PX, mostLeft), top: above };
  const [toLeft, toRight] = [x - BESIDE_PX - LENS.width, x + BESIDE_PX];
  const fits = (left: number): boolean => left >= EDGE_PX && left <= mostLeft;
  const [first, second] = drawsWith === 'right' ? [toLeft, toRight] : [toRight, toLeft];
  const left = fits(first) || !fits(second) ? first : second;
  const top = clamp(y - LENS_HEIGHT / 2, EDGE_PX, Math.max(EDGE_PX, room.height - LENS_HEIGHT - EDGE_PX));
  return { left: clamp(left, EDGE_PX, mostLeft), top };
}
