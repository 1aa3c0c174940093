/** A dash pattern and where in it a line starts, in the unit of the length. */
export interface Beat {
  readonly dash: readonly number[];
  readonly at: number;
}

/** Under this part of a period a leg is too short to show its beat. */
const SHORT = 0.75;

/**
 * Stretches a beat to a length, so that both ends get half of the first dash and corners are always ink.
 * Undefined: unbroken, for want of a pattern or of room.
 */
export function fitBeat(length: number, dash: readonly number[]): Beat | undefined {
  const period = dash.reduce((sum, d) => sum + d, 0);
  const first = dash[0];
  if (first === undefined || period <= 0 || length < SHORT * period) return undefined;
  const n = Math.max(1, Math.round(length / period));
  const stretch = length / (n * period);
  return { dash: dash.map((d) => d * stretch), at: (first * stretch) / 2 };
}
