import type { MakeCursor } from '../cursor/cursor-api.ts';

let loading: Promise<unknown> | undefined;

/** Set by `later.ts` when it has run. */
export const later: { isHere: boolean; makeCursor: MakeCursor | null } = { isHere: false, makeCursor: null };

/** Fetches what is not needed for the first line. Asked for again it is the same fetch; one that failed is tried anew. */
export function loadLater(): Promise<unknown> {
  loading ??= import('./later.ts').catch((why: unknown) => {
    loading = undefined;
    throw why;
  });
  return loading;
}
