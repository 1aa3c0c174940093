/** Least and most of the drawing's width that the plan has while something stands beside it, of 100. */
export const LEAST_SHARE = 25;
export const MOST_SHARE = 75;

const KEY = 'kickset.plan-share';
const EVEN = 50;

export const shareWithin = (share: number): number => Math.min(MOST_SHARE, Math.max(LEAST_SHARE, Math.round(share)));

/** What the device keeps of how the panes are parted. */
export function storedShare(): number {
  try {
    const kept = Number(localStorage.getItem(KEY) ?? EVEN);
    return Number.isFinite(kept) ? shareWithin(kept) : EVEN;
  } catch {
    return EVEN;
  }
}

export function keepShare(share: number): void {
  try {
    localStorage.setItem(KEY, String(share));
  } catch {
    // It holds until the page is closed.
  }
}
