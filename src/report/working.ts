import { type Quantity, roundQuantity } from './quantity.ts';

/** A cite that travels with a figure: ids of shared/sources and shared/tables plus the words a reader needs. */
export interface Cite {
  readonly source: string;
  readonly clause: string;
  readonly table?: string;
}

/** One line of a sum: what was taken or worked out, from what, with what result. */
export interface WorkingStep {
  readonly label: string;
  readonly how?: string;
  readonly result: Quantity | null;
  readonly cites: readonly Cite[];
}

/**
 * The whole of a sum. `result` is null when something needed is not known; then `missing` names it.
 * `assumed` are the things taken for granted, in words fit for the screen.
 */
export interface Working {
  readonly title: string;
  readonly steps: readonly WorkingStep[];
  readonly result: Quantity | null;
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
}

/** Every figure of a sum rounded as the report prints it. */
export function roundWorking(w: Working): Working {
  const round = (q: Quantity | null): Quantity | null => q && roundQuantity(q);
  return { ...w, steps: w.steps.map((s) => ({ ...s, result: round(s.result) })), result: round(w.result) };
}
