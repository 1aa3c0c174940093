import { constant } from '../../reference/figure.ts';
import type { Gap } from './gaps.ts';

/** Something near a terminal, before it is held against its row. */
export interface Candidate {
  /** Row of `table`. */
  readonly row: string;
  readonly table: 'flue-distances' | 'flue-roof-distances' | 'flue-plume';
  readonly ids: readonly string[];
  /** "the kitchen window" */
  readonly what: string;
  readonly gap: Gap;
  readonly shows: 'face' | 'plan';
  /** What is not known and decides whether the row holds at all; null where it holds. */
  readonly unless: string | null;
  /** Measured straight through a corner: somebody has to look how the way round it is. */
  readonly roundCorner: boolean;
}

export type Near = Pick<Candidate, 'row' | 'ids' | 'what' | 'gap'> & Partial<Candidate>;

export const candidate = (near: Near): Candidate => ({
  table: 'flue-distances',
  shows: 'face',
  unless: null,
  roundCorner: false,
  ...near,
});

export const LOOKED_MM = constant('flue-judgement', 'looked for within', 'mm');
export const FACED_MM = constant('flue-judgement', 'faces within', 'mm');
export const ON_FACE_MM = constant('flue-judgement', 'same face within', 'mm');
export const NEAR_FACE_MM = constant('flue-judgement', 'near within', 'mm');
export const STEP_MM = constant('flue-judgement', 'corner step', 'mm');
