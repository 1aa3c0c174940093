import type { Selected } from '../../editor/editor-api.ts';

/** What the list of differences chose last: the panel then stays at that list instead of opening what is chosen. */
export const shownDifference: { selection: readonly Selected[] | null } = { selection: null };
