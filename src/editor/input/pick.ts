import type { Xyz } from '../../plan/records/parts.ts';

/** What a pick caught, where that is more than a place. */
export type Target =
  | { readonly is: 'connection'; readonly point: string; readonly connection: string; readonly service: string }
  | { readonly is: 'node'; readonly node: string }
  | { readonly is: 'leg'; readonly leg: string; readonly alongMm: number }
  | { readonly is: 'wall'; readonly wall: string; readonly side: 'left' | 'right' | null };

/**
 * A place pointed at. In plan x and y are told and z is what is in hand; on a face the place along and z are told and
 * the stand-off is what is in hand. A caught thing tells all three.
 */
export interface Pick {
  readonly at: Xyz;
  readonly fixed: 'xy' | 'sz' | 'xyz';
  /** Id of the snap, 'free' where nothing was caught. */
  readonly source: string;
  /** What was caught, in a word. */
  readonly word: string | null;
  readonly target: Target | null;
}
