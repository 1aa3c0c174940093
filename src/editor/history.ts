import type { HistoryEntry } from './editor-api.ts';

export interface History {
  readonly undo: readonly HistoryEntry[];
  readonly redo: readonly HistoryEntry[];
}

export const noHistory: History = { undo: [], redo: [] };

/** Older steps fall off the far end: nobody undoes a day's work one step at a time. */
export const MOST_STEPS = 500;

export function record(history: History, entry: HistoryEntry): History {
  return { undo: [...history.undo, entry].slice(-MOST_STEPS), redo: [] };
}

/** The step to undo, and the history without it; undefined where there is none. */
export function stepBack(history: History): { entry: HistoryEntry; history: History } | undefined {
  const entry = history.undo.at(-1);
  return entry && { entry, history: { undo: history.undo.slice(0, -1), redo: [...history.redo, entry] } };
}

export function stepForward(history: History): { entry: HistoryEntry; history: History } | undefined {
  const entry = history.redo.at(-1);
  return entry && { entry, history: { undo: [...history.undo, entry], redo: history.redo.slice(0, -1) } };
}
