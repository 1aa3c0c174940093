/** Height to px of the ribbon: y grows down from its top. */
export interface RibbonScale {
  readonly perMm: number;
  /** z at the top edge. */
  readonly topZ: number;
  y(z: number): number;
  z(y: number): number;
}

export function scaleFrom(topZ: number, perMm: number): RibbonScale {
  return { perMm, topZ, y: (z) => (topZ - z) * perMm, z: (y) => topZ - y / perMm };
}

/** All of a storey with its build-up below and above, between margins. */
export function fitScale(lowZ: number, highZ: number, heightPx: number, marginPx: number): RibbonScale {
  const perMm = Math.max(0.01, (heightPx - 2 * marginPx) / Math.max(1, highZ - lowZ));
  return scaleFrom(highZ + marginPx / perMm, perMm);
}

/** Labels nearer than `leastPx` are pushed apart downwards from the top, keeping their order. */
export function spreadLabels(wanted: readonly number[], leastPx: number): number[] {
  const out: number[] = [];
  for (const y of wanted) {
    const before = out.at(-1);
    out.push(before === undefined ? y : Math.max(y, before + leastPx));
  }
  return out;
}
