/** A layer of a solid floor, from the top down. */
export interface Layer {
  readonly what: string;
  readonly thicknessMm: number;
}

export type LayerKind = 'screed' | 'concrete' | 'other';

/** What a layer is by what the survey calls it. */
export function layerKind(what: string): LayerKind {
  const said = what.toLowerCase();
  if (/screed/.test(said)) return 'screed';
  if (/concrete|slab/.test(said)) return 'concrete';
  return 'other';
}

/** The layer a depth below the top lies in, and how much lies over it; null past the last one. Depths in mm. */
export function layerAt(layers: readonly Layer[], belowTopMm: number): { layer: Layer; fromMm: number } | null {
  let fromMm = 0;
  for (const layer of layers) {
    if (belowTopMm >= fromMm && belowTopMm <= fromMm + layer.thicknessMm) return { layer, fromMm };
    fromMm += layer.thicknessMm;
  }
  return null;
}
