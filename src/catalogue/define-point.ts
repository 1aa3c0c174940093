import type { Connection, Field, Point } from '../plan/records/pipework.ts';

/**
 * A drawn part of a symbol, in mm of the point's own frame. Its origin is the middle of the back at the underside, so
 * that a thing on a wall has its back on the face: plan is x right, y out towards the reader; face is x right, z up
 * (given as y).
 */
export type SymbolPart =
  | {
      readonly draw: 'rect';
      readonly x: number;
      readonly y: number;
      readonly w: number;
      readonly h: number;
      readonly fill: boolean;
    }
  | { readonly draw: 'line'; readonly from: readonly [number, number]; readonly to: readonly [number, number] }
  | { readonly draw: 'ring'; readonly x: number; readonly y: number; readonly r: number; readonly fill: boolean }
  | { readonly draw: 'letter'; readonly x: number; readonly y: number; readonly text: string };

export type Size = Point['size'];
export type Fields = Point['fields'];

/** One field of the form that is made from the kind: what is asked, in what unit, within what bounds. */
export interface FieldSpec {
  readonly key: string;
  readonly label: string;
  readonly kind: 'number' | 'choice' | 'text' | 'yesNo';
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  readonly choices?: readonly { readonly value: string; readonly label: string }[];
  readonly help?: string;
  /** Fields of one heading stand together, folded away until they are wanted. Left out: among the first. */
  readonly under?: string;
  /** Found in this house, or set in it: no part of what an appliance's sheet says. */
  readonly survey?: boolean;
}

/** Does water or gas start here, or is it used up here? */
export type Part = 'source' | 'end';

export interface PointKind {
  readonly id: string;
  readonly version: number;
  readonly label: string;
  /** Letter or two that stand in the symbol. */
  readonly letter: string;
  readonly group: 'source' | 'appliance' | 'tap' | 'drain' | 'electrical' | 'other';
  /**
   * What the tracing takes it for, by service; or by connection id, which goes first, where one service both ends and
   * starts here (a tundish). Read it through `partOf`.
   */
  readonly role: Readonly<Record<string, Part>>;
  readonly hostedOnWall: boolean;
  /** Key of the assumed-heights table that gives its height when it is made. */
  readonly assumedHeight: string;
  readonly size: Size;
  readonly connections: (size: Size, fields: Fields) => Connection[];
  readonly fields: readonly FieldSpec[];
  readonly defaults: Fields;
  /** Fields that hold a gas heat input in kW; the greatest of them is the load. */
  readonly gasInputs?: readonly string[];
  /** Row of the table of appliance classes that stands in until the data plate is read. */
  readonly gasClass?: string;
  readonly planSymbol: (size: Size) => readonly SymbolPart[];
  readonly faceSymbol: (size: Size) => readonly SymbolPart[];
  /** One sentence for a screen reader and the terminal. */
  readonly describe: (point: Point) => string;
  readonly retired?: boolean;
}

export type { Field };
export const definePoint = (kind: PointKind): PointKind => kind;
