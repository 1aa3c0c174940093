import type { BlobRef } from '../../plan/records/statements.ts';
import { usePhotoUrl } from './photo-urls.ts';
import './photos.css';

/** What a photo is called where it has no name of its own. */
export const photoName = (photo: Pick<BlobRef, 'name'>): string =>
  photo.name === '' ? 'Photo without a name' : photo.name;

/** A photo as large as there is room; in words where its bytes are not on this device. */
export function PhotoView({ photo, small = false }: { readonly photo: BlobRef; readonly small?: boolean }) {
  const url = usePhotoUrl(photo.hash);
  if (url === null) {
    return small ? (
      <span className="photo-missing small">not here</span>
    ) : (
      <p className="photo-missing">
        The picture itself is not on this device: the file it came in did not carry it. Take it again, or open a file
        that has it.
      </p>
    );
  }
  if (url === undefined) return <span className={small ? 'photo-wait small' : 'photo-wait'} />;
  return <img className={small ? 'photo small' : 'photo'} src={url} alt={small ? '' : photoName(photo)} />;
}
