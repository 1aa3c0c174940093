import type { Medium } from '../look/tokens.ts';

/** At this scale and smaller, flags go; past the second, tags go. */
export const FLAGS_GO = 100;
export const TAGS_GO = 200;

/** How much a drawing can say: all of it, what is usual, or only what must be known at a glance. */
export type Fineness = 'close' | 'usual' | 'coarse';

/** Up to here every pipe at an appliance has room for words of its own. */
const CLOSE = 30;
/** From here a room on a small screen is hardly wider than three tags. */
const COARSE = 70;

/** A sheet is read from near and cannot be zoomed: it says all it has room for. */
export function finenessOf(mmPerPaperMm: number, medium: Medium): Fineness {
  if (medium === 'sheet' || mmPerPaperMm <= CLOSE) return 'close';
  return mmPerPaperMm < COARSE ? 'usual' : 'coarse';
}
