/**
 * A drawing as data: what is drawn, in mm of the view's plane (x right, y up), with semantic styles.
 * Pens and text are in mm of paper; whoever paints maps both to pixels or to a sheet.
 */
export type Vec = readonly [number, number];

/** A semantic style: painters look it up in the look tokens for day, night or print. */
export interface LineStyle {
  /** 'service:gas', 'wallEdge', 'dimension', 'leader', 'hatch', 'symbol', 'opening', 'doorLeaf', 'batten', 'live', 'chosen'… */
  readonly ink: string;
  /** Pen in paper mm. */
  readonly pen: number;
  /** Dash lengths in paper mm; empty: unbroken. `fit` stretches the beat so that both ends of the leg get half a dash. */
  readonly dash: readonly number[];
  readonly fit: boolean;
  /** Assumed things are drawn hollow: this pen of paper down the middle. */
  readonly core?: number;
}

export type Item =
  | { readonly t: 'line'; readonly pts: readonly Vec[]; readonly style: LineStyle; readonly closed?: boolean; readonly roundMm?: number }
  | { readonly t: 'area'; readonly rings: readonly (readonly Vec[])[]; readonly fill: string; readonly edge?: LineStyle }
  /** A mark whose size is in paper mm whatever the scale: tee dot, rise, drop, valve, finding, handle. */
  | { readonly t: 'mark'; readonly mark: string; readonly at: Vec; readonly turnDeg: number; readonly ink: string; readonly text?: string; readonly sizeMm?: number }
  | {
      readonly t: 'text';
      readonly at: Vec;
      readonly text: string;
      readonly size: 'tag' | 'room' | 'flag' | 'flagSecond' | 'dimension';
      readonly weight: 400 | 600;
      readonly align: 'left' | 'middle' | 'right';
      readonly ink: string;
      readonly turnDeg: number;
      readonly halo: boolean;
      /** Drawn on a plate of paper with an edge of this ink (tags). */
      readonly plate?: string;
      /** Offset from `at` in paper mm, so that labels keep their distance at every scale. */
      readonly offsetMm?: Vec;
      readonly underline?: 'dotted';
    };

/** What a fragment covers, for culling and hit testing, in mm of the view's plane. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Drawing of one record, kept while the record and what it leans on are the same objects. */
export interface Fragment {
  readonly id: string;
  readonly map: string;
  readonly layer: PainterGroup;
  readonly items: readonly Item[];
  readonly box: Box;
}

/** Painted in this order, one shape each. */
export const PAINTER_GROUPS = ['trace', 'ground', 'void', 'room', 'wall', 'opening', 'joist', 'point', 'run', 'item', 'label', 'finding'] as const;
export type PainterGroup = (typeof PAINTER_GROUPS)[number];

/** What is looked at: a storey from above, or the side of a wall. */
export type View =
  | { readonly kind: 'plan'; readonly storey: string }
  | { readonly kind: 'face'; readonly wall: string; readonly side: 'left' | 'right' };

export interface DisplayList {
  readonly view: View;
  readonly box: Box;
  readonly items: readonly { readonly group: PainterGroup; readonly id: string; readonly items: readonly Item[] }[];
}
