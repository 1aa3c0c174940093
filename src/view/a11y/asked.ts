import { createStore } from 'zustand/vanilla';

/** What a key asked for that stands elsewhere on the page, and is only there a moment later. */
export interface Asked {
  /** The field for the work height is open. */
  readonly height: boolean;
  /** Where in the list of things the focus is wanted; null: nowhere. */
  readonly things: 'find' | 'list' | null;
  /** Rises with every wish to hear where the cross is. */
  readonly where: number;
}

export const asked = createStore<Asked>(() => ({ height: false, things: null, where: 0 }));
