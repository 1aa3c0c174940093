import { createStore } from 'zustand/vanilla';

/** What a key asked for that stands elsewhere on the page, and is only there a moment later. */
export interface Asked {
  /** The field for the work height is open. */
  readonly height: boolean;
  /** Where in the list of things the focus is wanted; null: nowhere. */
  readonly things: 'find' | 'list' | null;
  /** When something was asked for last. */
  readonly since: number;
  /** What was typed since, before the field was there. */
  readonly typed: string;
  /** The list of things chose something and stays open: its form does not come in its place. */
  readonly staying: boolean;
  /** Rises with every wish to hear where the cross is. */
  readonly where: number;
}

export const asked = createStore<Asked>(() => ({
  height: false,
  things: null,
  since: 0,
  typed: '',
  staying: false,
  where: 0,
}));

/** True once after the list has chosen something for itself. */
export function isStaying(): boolean {
  const { staying } = asked.getState();
  if (staying) asked.setState({ staying: false });
  return staying;
}
