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
