import type { Quantity } from './quantity.ts';
import type { State } from './section.ts';
import type { Cite } from './working.ts';

/** One distance of a terminal, found and wanted. Ends in mm from the datum, so that plan and elevation can both draw it. */
export interface FlueDistance {
  /** Row of the table it is held against: "opening-below". */
  readonly row: string;
  /** "to the side of an opening" */
  readonly label: string;
  /** What lies at the far end: runs, points, voids, walls, openings or rooms. */
  readonly ids: readonly string[];
  readonly from: { readonly x: number; readonly y: number; readonly z: number };
  readonly to: { readonly x: number; readonly y: number; readonly z: number };
  /** Seen on the elevation (lies in the wall's face), or only in plan (goes out from it). */
  readonly shows: 'face' | 'plan';
  readonly found: Quantity;
  readonly wanted: Quantity | null;
  readonly state: State;
  readonly say: string;
  readonly cites: readonly Cite[];
}

/** One terminal and everything near it, on the outside of its wall or on its roof. */
export interface FlueFace {
  readonly terminal: string;
  readonly appliance: string | null;
  readonly storey: string;
  /** The wall it comes out of; null on a roof. */
  readonly wall: string | null;
  readonly side: 'left' | 'right' | null;
  /** Middle of the terminal, mm from the datum. */
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  readonly state: State;
  readonly distances: readonly FlueDistance[];
  /** What could not be told, and what would have to be measured for it. */
  readonly missing: readonly string[];
}
