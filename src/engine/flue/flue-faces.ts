import type { FlueFace } from '../../report/flue-face.ts';
import type { Given } from '../given.ts';

/** The outside of every terminal that stands in this case, with its distances, in the order of the terminals. */
export function flueFacesOf(_given: Given): readonly FlueFace[] {
  return [];
}
