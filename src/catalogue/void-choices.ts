import { figure } from '../reference/figure.ts';

/** What is taken of joists nobody has seen, mm; `underside` is above a ceiling, `deck` is over the joists. */
export interface AssumedJoists {
  readonly centresMm: number;
  readonly breadthMm: number;
  /** Clear between a wall and the side of the first joist. */
  readonly offWallMm: number;
  readonly underside: { readonly mm: number; readonly lo: number; readonly hi: number };
  readonly deck: { readonly mm: number; readonly lo: number; readonly hi: number };
}

/** Sizes offered as keys, mm, least first. */
export interface VoidChoices {
  readonly centresMm: readonly number[];
  readonly depthMm: readonly number[];
  readonly boxDepthMm: readonly number[];
  readonly chaseDepthMm: readonly number[];
}

/** A layer of a solid floor with the thickness it usually has. */
export interface AssumedLayer {
  readonly what: string;
  readonly thicknessMm: number;
}

const COLUMNS = ['first', 'second', 'third', 'fourth'] as const;

function offered(what: string): number[] {
  return COLUMNS.flatMap((column) => {
    const found = figure('void-choices', what, column);
    return found.is === 'known' ? (found.value ?? found.lo) : [];
  });
}

function taken(what: string): { mm: number; lo: number; hi: number } {
  const found = figure('assumed-joists', what, 'mm');
  if (found.is !== 'known' || found.hi === null) throw new Error(`no assumed joist figure for "${what}"`);
  return { mm: found.value ?? found.lo, lo: found.lo, hi: found.hi };
}

export function assumedJoists(): AssumedJoists {
  return {
    centresMm: taken('centres').mm,
    breadthMm: taken('breadth').mm,
    offWallMm: taken('first off wall').mm,
    underside: taken('board under'),
    deck: taken('deck over'),
  };
}

export const voidChoices = (): VoidChoices => ({
  centresMm: offered('joist centres'),
  depthMm: offered('joist depth'),
  boxDepthMm: offered('box depth'),
  chaseDepthMm: offered('chase depth'),
});

const LAYERS = ['screed', 'insulation', 'concrete', 'hardcore'] as const;

/** The usual layers of a solid floor, from the top down. */
export function assumedLayers(): AssumedLayer[] {
  return LAYERS.flatMap((what) => {
    const found = figure('assumed-layers', what, 'mm');
    return found.is === 'known' ? { what, thicknessMm: found.value ?? found.lo } : [];
  });
}
