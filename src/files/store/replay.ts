import { applyPatches, enablePatches, type Patch } from 'immer';
import type { StepEntry, StepRow } from './store-port.ts';

enablePatches();

/** A document and the steps that led to it and back. `plan` is what a file holds before it is checked. */
export interface Replayed {
  readonly plan: object;
  readonly undo: readonly StepEntry[];
  readonly redo: readonly StepEntry[];
  /** Number of the last step that is in it. */
  readonly seq: number;
}

const isEntry = (entry: unknown): entry is StepEntry => {
  const e = entry as Partial<StepEntry> | null;
  return typeof e?.label === 'string' && Array.isArray(e.patches) && Array.isArray(e.inverse);
};

/** One step on; null where it does not fit: a gap, a record that is no step, patches that lead nowhere. */
export function stepOn(from: Replayed, row: StepRow, version: number): Replayed | null {
  const { kind, entry } = row;
  if (row.seq !== from.seq + 1 || row.version !== version || !isEntry(entry)) return null;
  const patches = (kind === 'undo' ? entry.inverse : entry.patches) as readonly Patch[];
  try {
    const at = { plan: applyPatches(from.plan, patches), seq: row.seq };
    if (kind === 'do') return { ...at, undo: [...from.undo, entry], redo: [] };
    if (kind === 'undo') return { ...at, undo: from.undo.slice(0, -1), redo: [...from.redo, entry] };
    return { ...at, undo: [...from.undo, entry], redo: from.redo.slice(0, -1) };
  } catch {
    return null;
  }
}

/** As far as the steps fit, and how many did not. */
export function replay(from: Replayed, rows: readonly StepRow[], version: number): { at: Replayed; cut: number } {
  let at = from;
  for (const [done, row] of rows.entries()) {
    const next = stepOn(at, row, version);
    if (next === null) return { at, cut: rows.length - done };
    at = next;
  }
  return { at, cut: 0 };
}
