import type { Connection, Field, Point } from '../plan/records/pipework.ts';

/** A drawn part of a symbol, in mm of the point's own plan (x right, y towards the reader) or face (x right, z up). */
export type SymbolPart =
  | { readonly draw: 'rect'; readonly x: number; readonly y: number; readonly w: number; readonly h: number; readonly fill: boolean }
  | { readonly draw: 'line'; readonly from: readonly [number, number]; readonly to: readonly [number, number] }
  | { readonly draw: 'ring'; readonly x: number; readonly y: number; readonly r: number; readonly fill: boolean }
  | { readonly draw: 'letter'; readonly x: number; readonly y: number; readonly text: string };

export type Size = Point['size'];

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
}

export interface PointKind {
  readonly id: string;
  readonly version: number;
  readonly label: string;
  /** Letter or two that stand in the symbol. */
  readonly letter: string;
  readonly group: 'source' | 'appliance' | 'tap' | 'drain' | 'electrical' | 'other';
  /** What the tracing takes it for, by service: where that water or gas starts, or where it is used. */
  readonly role: Readonly<Record<string, 'source' | 'end'>>;
  readonly hostedOnWall: boolean;
  /** Key of the assumed-heights table that gives its height when it is made. */
  readonly assumedHeight: string;
  readonly size: Size;
  readonly connections: (size: Size) => Connection[];
  readonly fields: readonly FieldSpec[];
  readonly defaults: Readonly<Record<string, Field>>;
  readonly planSymbol: (size: Size) => readonly SymbolPart[];
  readonly faceSymbol: (size: Size) => readonly SymbolPart[];
  /** One sentence for a screen reader and the terminal. */
  readonly describe: (point: Point) => string;
  readonly retired?: boolean;
}

export const definePoint = (kind: PointKind): PointKind => kind;
