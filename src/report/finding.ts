import type { Quantity } from './quantity.ts';
import type { Cite, Working } from './working.ts';

/** stop: not as drawn. check: look, measure or go a size up. note: good to know. cantTell: something needed is missing. */
export type Outcome = 'stop' | 'check' | 'note' | 'cantTell';
export const OUTCOMES: readonly Outcome[] = ['stop', 'check', 'cantTell', 'note'];

/** Where to look: a place in space, on a storey. `ring` marks the spot (a clash), otherwise the mark stands off. */
export interface FindingPlace {
  readonly storey: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly ring: boolean;
}

/** A limit that a sheet may replace: which, for what thing, in what unit, and the page the figure in use stands on. */
export interface FindingLimit {
  readonly id: string;
  readonly scope: string | null;
  readonly unit: string;
  readonly own: { readonly id: string; readonly page: string; readonly note: string } | null;
}

/**
 * What is wrong, why it matters, what to do; with found and wanted as figures where there are any.
 * `ids` are runs, points, voids, walls, openings or rooms (never legs or nodes), sorted: with rule and option they are
 * the finding's key, so that a note on it survives re-drawing. `legs` only light up the drawing.
 */
export interface Finding {
  readonly rule: string;
  readonly key: string;
  readonly outcome: Outcome;
  /** Law or life safety: an acknowledgement is printed beside it, and it still prints as stop. */
  readonly lifeSafety: boolean;
  readonly topic: string;
  readonly ids: readonly string[];
  readonly legs: readonly string[];
  readonly title: string;
  readonly why: string;
  readonly todo: string;
  readonly found: Quantity | null;
  readonly wanted: Quantity | null;
  readonly wantedIs: 'atMost' | 'atLeast' | null;
  readonly at: FindingPlace | null;
  /** How many more places of the same pair this one stands for. */
  readonly more: number;
  readonly missing: readonly string[];
  readonly working: Working | null;
  readonly cites: readonly Cite[];
  readonly unverified: boolean;
  /** Left out where no sheet has a say in it. */
  readonly limit?: FindingLimit;
}

/** The key a statement of the user hangs on. */
export function findingKey(rule: string, ids: readonly string[], option: string | null): string {
  return [rule, [...ids].sort().join(','), option ?? ''].join('|');
}

const rank = (o: Outcome): number => OUTCOMES.indexOf(o);

/** Worst first, then by rule and key: the same plan gives the same order. */
export function byWorst(a: Finding, b: Finding): number {
  return (
    rank(a.outcome) - rank(b.outcome) ||
    (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : a.key < b.key ? -1 : a.key > b.key ? 1 : 0)
  );
}
