import type { PhotoPlace } from '../../geometry/photo-place.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import type { Fragment } from '../display-list.ts';
import { makeFragment } from './fragment.ts';

/** A small camera where a photo was taken of. What it shows is opened from there, never drawn. */
export function photoFragment(photo: BlobRef, { at }: PhotoPlace): Fragment {
  return makeFragment(photo.id, 'blobRefs', 'item', [
    { t: 'mark', mark: 'photo', at: [at.x, at.y], turnDeg: 0, ink: 'symbol' },
  ]);
}
