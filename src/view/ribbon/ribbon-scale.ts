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

/** Half the height of the tab of the work height, px. */
export const TAB_HALF_PX = 22;
const TAB_EDGE_PX = 24;

/** Where the middle of that tab stands: at its height, but never past an end of the ribbon. */
export const tabY = (scale: RibbonScale, z: number, heightPx: number): number =>
  Math.min(Math.max(scale.y(z), TAB_EDGE_PX), heightPx - TAB_EDGE_PX);
