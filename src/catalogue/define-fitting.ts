import type { Joining } from '../plan/records/pipework.ts';
import type { MatingEnd } from '../report/piece.ts';

/** What is asked of a fitting: how it is joined, and the sizes of its ways in trade order, threads last. */
export interface FittingAsk {
  readonly joining: Joining;
  /** Nominal sizes: one for a fitting of one size, [larger, smaller] for a reducer, [end, end, branch] for a tee. */
  readonly sizes: readonly string[];
}

export interface FittingKind {
  readonly id: string;
  /** What the path through it turns by, in degrees; null where it has no path (a stop end) or several (a tee). */
  readonly degrees: 0 | 45 | 90 | null;
  /** False: made from the tube itself, nothing to buy. */
  readonly bought: boolean;
  /** Counter words without size and number: "end feed elbow". */
  readonly label: (ask: FittingAsk) => string;
  /** "22", "28 x 22", "22 x 22 x 15". */
  readonly size: (ask: FittingAsk) => string;
  readonly ends: (ask: FittingAsk) => readonly MatingEnd[];
}

export const defineFitting = (kind: FittingKind): FittingKind => kind;

/** The end that takes a tube: a socket for all but threaded pipe. Empty sizes have no end. */
export function takes(ask: FittingAsk, size: string | undefined): MatingEnd[] {
  if (size === undefined) return [];
  return [{ form: ask.joining === 'threaded' ? 'thread-in' : 'socket', size, joining: ask.joining }];
}

/** A plain end that goes into a socket of its size; a male thread on threaded pipe. */
export function goesIn(ask: FittingAsk, size: string | undefined): MatingEnd[] {
  if (size === undefined) return [];
  return [{ form: ask.joining === 'threaded' ? 'thread-out' : 'spigot', size, joining: ask.joining }];
}

export const oneSize = (ask: FittingAsk): string => ask.sizes[0] ?? '';
export const allSizes = (ask: FittingAsk): string => ask.sizes.join(' x ');
