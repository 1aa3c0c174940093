import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { type Elevation, tracedFaces } from '../../drawing/flue-face/elevation.ts';
import type { Plan } from '../../plan/plan.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { laidPictures, nameOfLaid, wantLaid } from '../traces/laid-pictures.ts';
import type { Laid } from '../traces/rectify.ts';

/** A picture that was laid under a wall of this face, and where its own plane begins on it. */
export interface FacePhoto {
  readonly record: BlobRef;
  readonly across: number;
}

export function photosUnder(plan: Plan, elevation: Elevation): readonly FacePhoto[] {
  const across = new Map(tracedFaces(plan, elevation).map((t) => [t.on, t.across]));
  return Object.values(plan.blobRefs).flatMap((record) => {
    const from = record.on === null ? undefined : across.get(record.on);
    return record.kind === 'trace' && record.place !== null && from !== undefined ? [{ record, across: from }] : [];
  });
}

export interface LaidPhoto extends FacePhoto {
  readonly laid: Laid;
}

/** Those of them that are ready to be painted. */
export function useLaidPhotos(photos: readonly FacePhoto[]): readonly LaidPhoto[] {
  const laid = useStore(laidPictures, (s) => s.laid);
  useEffect(() => {
    for (const { record } of photos) wantLaid(record);
  }, [photos]);
  return useMemo(
    () =>
      photos.flatMap((p) => {
        const ready = laid.get(nameOfLaid(p.record));
        return ready ? [{ ...p, laid: ready }] : [];
      }),
    [photos, laid],
  );
}
