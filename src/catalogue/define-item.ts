import type { FieldSpec, Fields, SymbolPart } from './define-point.ts';

/** A thing in line with, or on the end of, a pipe. */
export interface ItemKind {
  readonly id: string;
  readonly label: string;
  /** Its mark, in mm of paper about the node: x along the pipe, y across it. */
  readonly mark: readonly SymbolPart[];
  /** Services it is used in; empty: all. */
  readonly services: readonly string[];
  readonly stands: readonly ('inline' | 'end')[];
  /** Key of its row in the tables of lengths to add; null: it adds none, or none has been read. */
  readonly equivalentLength: string | null;
  /** Counter words without size: "full bore lever valve". */
  readonly listName: string;
  readonly fields: readonly FieldSpec[];
  readonly defaults: Fields;
}

export const defineItem = (kind: ItemKind): ItemKind => kind;
