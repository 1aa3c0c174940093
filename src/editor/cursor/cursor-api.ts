import type { Vec } from '../../drawing/display-list.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { EditorState, KeyInput, PointerInput } from '../editor-api.ts';

/** The cross that is moved by keys, as the drawing shows it. */
export interface CursorState {
  readonly pane: EditorState['panes']['active'];
  /** In the plane of the pane, mm. */
  readonly at: Vec;
  /** How far one arrow goes, mm. */
  readonly stepMm: number;
  /** Something is held with it, as with a button that is down. */
  readonly held: boolean;
  /** Rises with every move that was asked for, also with one that led nowhere. */
  readonly n: number;
}

export interface CursorPorts {
  readonly get: () => EditorState;
  readonly show: (cursor: CursorState | null) => void;
  readonly pointer: (event: PointerInput) => void;
  readonly pan: (pane: CursorState['pane'], dx: number, dy: number) => void;
  /** The tool's own keys: true where it did something. */
  readonly toolKey: (input: KeyInput) => boolean;
  readonly cancel: () => void;
  readonly say: (text: string) => void;
}

/** Moves a cross over the drawing by keys and drives the tool in hand with it, as a mouse would. */
export interface Cursor {
  /** True when it did something with the key. Only asked while the drawing has the focus. */
  key(input: KeyInput): boolean;
  step(by: 1 | -1): void;
  /** Stands at a place of the house, in the pane in hand. */
  goTo(at: Xyz): void;
}

export type MakeCursor = (ports: CursorPorts) => Cursor;
