import { useEffect, useState } from 'react';
import { pictureUse } from '../../files/store/blobs.ts';
import { roomLeftMb } from '../../files/store/keep-storage.ts';
import { storage } from '../app/storage.ts';
import { useEditorState } from '../app/use-session.ts';
import { PhotoKeys, PhotoList, photosOf } from '../photos/photo-list.tsx';
import { sayUse } from '../photos/say-pictures.ts';

/** Photos of the job, and the room that its pictures take on this device. */
export function JobPhotos() {
  const plan = useEditorState((s) => s.plan);
  const photos = photosOf(plan);
  const use = useUse();
  return (
    <>
      {photos.length === 0 && (
        <p className="fold-says">
          No photo yet. Each is made small, kept on this device, pinned to a thing or a place, and goes with the job's
          file.
        </p>
      )}
      {photos.length > 0 && <PhotoList photos={photos} />}
      <PhotoKeys on={null} />
      {use !== '' && <p className="photo-use">{use}</p>}
    </>
  );
}

function useUse(): string {
  const blobRefs = useEditorState((s) => s.plan.blobRefs);
  const [said, setSaid] = useState('');
  useEffect(() => {
    let gone = false;
    const ask = async (): Promise<void> => {
      const used = sayUse(await pictureUse(await storage(), { blobRefs }));
      const left = used === '' ? null : await roomLeftMb(navigator.storage);
      if (!gone) setSaid(left === null ? used : `${used} ${left.toLocaleString('en-GB')} MB are left for Kickset.`);
    };
    ask().catch(() => {
      if (!gone) setSaid('How much room the pictures take cannot be told: this browser keeps its storage closed.');
    });
    return () => {
      gone = true;
    };
  }, [blobRefs]);
  return said;
}
