/** One mating end of a piece: a socket takes a spigot of its size. */
export interface MatingEnd {
  readonly form: 'socket' | 'spigot' | 'thread-in' | 'thread-out' | 'face';
  readonly size: string;
  readonly joining: string;
}

/** One real thing to buy or to make: a length of tube, an elbow, a tee, a clip. `at` is what it is for. */
export interface Piece {
  readonly kind: string;
  readonly family: PieceFamily;
  /** Counter words without size and number: "end feed elbow". */
  readonly name: string;
  readonly size: string;
  readonly joining: string;
  readonly ends: readonly MatingEnd[];
  /** Tube is counted in mm, everything else singly. */
  readonly amount: number;
  readonly unit: 'mm' | 'each';
  readonly run: string | null;
  readonly at: {
    readonly node?: string;
    readonly leg?: string;
    readonly point?: string;
    readonly item?: string;
    readonly wall?: string;
  };
  readonly note: string;
  readonly unverified: boolean;
  /** Said instead of a size where the drawing does not decide what stands there. */
  readonly unresolved: string | null;
}

/** Order of a list as a counter reads it: pipe first, then fittings, valves, clips, the rest. */
export const PIECE_FAMILIES = [
  'tube',
  'fitting',
  'valve',
  'support',
  'sleeve',
  'appliance',
  'insulation',
  'sundry',
] as const;
export type PieceFamily = (typeof PIECE_FAMILIES)[number];

/** Equal pieces on one line. `quantity` is what the drawing gives; an edit of the user stands beside it, never over it. */
export interface Line {
  readonly key: string;
  readonly family: PieceFamily;
  readonly piece: string;
  readonly name: string;
  readonly size: string;
  readonly joining: string;
  readonly quantity: number;
  readonly unit: 'm' | 'each';
  /** How it is asked for where that is not the quantity itself: "7 lengths of 3 m" beside 18.4 m. */
  readonly asked: string;
  readonly edited: {
    readonly quantity: number | null;
    readonly madeOn: number;
    readonly note: string;
    readonly moved: boolean;
  } | null;
  readonly runs: readonly string[];
  readonly at: readonly Piece['at'][];
  readonly note: string;
  readonly unverified: boolean;
  readonly unresolved: string | null;
}

/** The key edits hang on. */
export function lineKey(option: string | null, piece: string, size: string, joining: string): string {
  return [option ?? '', piece, size, joining].join('|');
}
