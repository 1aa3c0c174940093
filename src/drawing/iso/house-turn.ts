import type { Xy } from '../../plan/records/parts.ts';

/** Nearer to the sheet's own axes than this is drawing, not turning. */
const LEAST_DEG = 0.5;
/** Lines that agree by less than this part of their length have no common way. */
const AGREED = 0.5;

/**
 * How far the lines of a house lie turned against the sheet, in degrees from -45 to 45: most of their length lies along
 * or across that way. 0 where they agree on none.
 */
export function houseTurn(lines: readonly (readonly [Xy, Xy])[]): number {
  let [x, y, all] = [0, 0, 0];
  for (const [a, b] of lines) {
    const l = Math.hypot(b.x - a.x, b.y - a.y);
    // Four times the angle: along, across and back are one way.
    const four = 4 * Math.atan2(b.y - a.y, b.x - a.x);
    x += l * Math.cos(four);
    y += l * Math.sin(four);
    all += l;
  }
  if (all === 0 || Math.hypot(x, y) < AGREED * all) return 0;
  const deg = (Math.atan2(y, x) * 45) / Math.PI;
  return Math.abs(deg) < LEAST_DEG ? 0 : deg;
}
