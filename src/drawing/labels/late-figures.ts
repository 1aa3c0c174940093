import type { chosenFigures } from './chosen-figures.ts';

/** Figures of what is chosen: nobody has chosen anything before the first line, so they come after it. Null until then. */
export const lateFigures: { of: typeof chosenFigures | null } = { of: null };
