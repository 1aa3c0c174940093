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
  /** To be taken out: a small cross every so many paper mm. */
  readonly strike?: number;
  /** The way between is not known: only so many paper mm at each end are drawn so, joined by a dotted hairline. */
  readonly ends?: number;
  readonly cap?: 'butt' | 'round';
}

/**
 * One line of a bank, nearer to its neighbours than can be read. `gaps` are the true distances between the members in
 * order along `n`; at a scale where one is under the least pitch, the members are pushed apart about the middle.
 */
export interface Shift {
  readonly n: Vec;
  readonly gaps: readonly number[];
  readonly index: number;
  /** What of the bank stays where it is: 0 its first line, 1 its last, 0.5 the middle. Away from a wall, not into it. */
  readonly anchor: number;
}
/** How a place moves when its bank is spread: along one line, or at the meeting of two. */
export type Spread = readonly Shift[];

export interface LineItem {
  readonly t: 'line';
  readonly pts: readonly Vec[];
  readonly style: LineStyle;
  readonly closed?: boolean;
  readonly roundMm?: number;
  /** Painted only while a mm of paper stands for so many mm of the plane: from the first, up to below the second. */
  readonly scales?: Vec;
  /** Most that may be left off each end, in mm of the plane, for the rounding of a corner drawn by its node; 0: nothing. */
  readonly trim?: Vec;
  /** Where something passes in front, and how that moves with its bank. The line is broken there. */
  readonly gaps?: readonly { readonly at: Vec; readonly spread?: Spread }[];
  /** One for each of `pts`. */
  readonly spread?: readonly Spread[];
  /** Offset of each of `pts` in paper mm (x right, y up), so that leaders keep their shape at every scale. */
  readonly offsetsMm?: readonly Vec[];
}

/** The rounded meeting of two legs at `at`; the legs leave towards `a` and `b`. */
export interface CornerItem {
  readonly t: 'corner';
  readonly at: Vec;
  readonly a: Vec;
  readonly b: Vec;
  readonly style: LineStyle;
  readonly radiusMm: number;
  /** Most that the corner may take of each leg, in mm of the plane. */
  readonly most: number;
  readonly spread?: Spread;
}

export interface AreaItem {
  readonly t: 'area';
  readonly rings: readonly (readonly Vec[])[];
  /** 'wall', 'void', 'room', 'paper', 'slab' (with its hatch), 'tint', 'none'… */
  readonly fill: string;
  readonly edge?: LineStyle;
}

/** A mark whose size is in paper mm whatever the scale: tee dot, rise, drop, valve, finding, handle. */
export interface MarkItem {
  readonly t: 'mark';
  readonly mark: string;
  readonly at: Vec;
  readonly turnDeg: number;
  readonly ink: string;
  readonly text?: string;
  readonly sizeMm?: number;
  readonly offsetMm?: Vec;
  readonly spread?: Spread;
  /** Half the room it has, in mm of the plane: where that is less than its half on paper, it is drawn smaller. */
  readonly roomMm?: number;
}

/** 'small': tags of a bank, letters of points. */
export type TextSize = 'small' | 'tag' | 'room' | 'flag' | 'flagSecond' | 'dimension';

export interface TextItem {
  readonly t: 'text';
  /** Middle of the line of text in height, and its left, middle or right after `align`. */
  readonly at: Vec;
  readonly text: string;
  readonly size: TextSize;
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
  readonly spread?: Spread;
}

export type Item = LineItem | CornerItem | AreaItem | MarkItem | TextItem;

/** What a fragment covers, for culling and hit testing, in mm of the view's plane. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface RiserWords {
  readonly letters: string;
  readonly up: boolean;
  readonly level: string;
  readonly z: number;
  /** Where it starts or ends at a point: which, and how it leaves it. */
  readonly from?: { readonly point: string; readonly up: boolean; readonly level: string; readonly z: number };
}

/** A label that a record asks for. Where it goes is decided for the whole drawing at once, at one scale. */
export type Wish =
  /** Letters and size on the line itself. Legs of one `stretch` share their tags. */
  | {
      readonly w: 'tag';
      /** Of the service alone, for a key. */
      readonly letters: string;
      readonly stretch: string;
      readonly text: string;
      readonly ink: string;
      readonly from: Vec;
      readonly to: Vec;
      readonly spread?: readonly [Spread, Spread];
    }
  /** What, then how, at the end of a kicked leader. Lower rank is placed first. */
  | {
      readonly w: 'flag';
      readonly at: Vec;
      readonly what: string;
      readonly how: string | null;
      readonly rank: number;
      readonly spread?: Spread;
      /** Paper mm about `at` that belong to the mark it speaks of: the leader starts there. */
      readonly clearMm?: number;
      /** Said of this line rather than of a thing: stands close by it without a leader. */
      readonly along?: readonly [Vec, Vec];
      /** A rise or drop: several at one place share a flag. */
      readonly riser?: RiserWords;
    }
  /** Letters of a symbol: inside it where there is room (`half` is half its size in mm), else beside it. */
  | {
      readonly w: 'letter';
      readonly at: Vec;
      readonly text: string;
      readonly ink: string;
      readonly half: Vec;
      readonly insideOnly: boolean;
    }
  /** A name that stands inside its own outline. An empty text leaves only the second, smaller line. */
  | {
      readonly w: 'name';
      readonly at: Vec;
      readonly text: string;
      readonly second: string | null;
      readonly ring: readonly Vec[];
      /** Name of a thing, not of a room: in the size of a flag. */
      readonly small?: boolean;
    }
  /** Distance from `a` to `b`, the line `awayMm` of paper off along `side`. `unsure`: taken from something assumed. */
  | {
      readonly w: 'dimension';
      readonly a: Vec;
      readonly b: Vec;
      readonly side: Vec;
      readonly awayMm: number;
      readonly text: string;
      readonly unsure: boolean;
      readonly measures?: Measures;
    };

/**
 * What a figure on the drawing measures, so that another one in its place can be carried out. `way`: along the plane, where
 * what moves goes as the figure grows. `clear`: between the faces of two walls, told in that way.
 */
export type Measures =
  | { readonly of: 'leg' | 'wall'; readonly id: string }
  | { readonly of: 'clear'; readonly low: string; readonly high: string; readonly way: Vec }
  | { readonly of: 'point'; readonly id: string; readonly way: Vec }
  /** `sign`: -1 where the figure grows as the opening goes towards the end it is told from. */
  | {
      readonly of: 'opening';
      readonly id: string;
      readonly what: 'along' | 'width' | 'sill' | 'height';
      readonly sign: 1 | -1;
    };

/** A figure as it was placed: the places it is measured between, the middle of its text, and half the room of that. */
export interface Figure {
  readonly measures: Measures;
  readonly mm: number;
  readonly a: Vec;
  readonly b: Vec;
  readonly at: Vec;
  /** From `at`, in paper mm. */
  readonly offsetMm: Vec;
  readonly halfMm: Vec;
}

/** Drawing of one record, kept while the record and what it leans on are the same objects. */
export interface Fragment {
  readonly id: string;
  readonly map: string;
  readonly layer: PainterGroup;
  readonly items: readonly Item[];
  readonly box: Box;
  readonly wishes: readonly Wish[];
}

/** Painted in this order, one shape each. */
export const PAINTER_GROUPS = [
  'trace',
  'ground',
  'void',
  'room',
  'wall',
  'opening',
  'joist',
  'point',
  'run',
  'item',
  'label',
  'finding',
] as const;
export type PainterGroup = (typeof PAINTER_GROUPS)[number];

/**
 * What is looked at: a storey from above, or the side of a wall. `turnDeg`: the house is laid on the plane turned
 * anticlockwise by so much about the datum; left out where it is not.
 */
export type View =
  | { readonly kind: 'plan'; readonly storey: string; readonly turnDeg?: number }
  | { readonly kind: 'face'; readonly wall: string; readonly side: 'left' | 'right' };

export interface DisplayList {
  readonly view: View;
  readonly box: Box;
  readonly items: readonly DrawnItems[];
}

export interface DrawnItems {
  readonly group: PainterGroup;
  readonly id: string;
  readonly items: readonly Item[];
  /** Of a label that is a figure: what it measures. */
  readonly figure?: Figure;
}
