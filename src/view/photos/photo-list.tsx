import { useState } from 'react';
import { photoPlace } from '../../geometry/photo-place.ts';
import type { Plan } from '../../plan/plan.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { nameOf } from '../panels/name-of.ts';
import { selectedOf } from '../panels/show-ids.ts';
import { PhotoView, photoName } from './photo-view.tsx';
import { addPhoto, type From } from './take-photo.ts';

/** "of Boiler", "a place on Ground floor", "not pinned yet". */
export function sayPlace(plan: Plan, photo: BlobRef): string {
  const [thing] = photo.on === null ? [] : selectedOf(plan, [photo.on]);
  if (thing) return `of ${nameOf(plan, thing)}`;
  const place = photoPlace(plan, photo);
  return place ? `a place on ${plan.storeys[place.storey]?.name ?? 'a floor'}` : 'not pinned yet';
}

export const photosOf = (plan: Plan, on?: string): readonly BlobRef[] =>
  Object.values(plan.blobRefs)
    .filter((b) => b.kind === 'photo' && (on === undefined || b.on === on))
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }) || (a.id < b.id ? -1 : 1));

/** Photos with their names; a tap opens one, and lights its mark on the plan. */
export function PhotoList({ photos }: { readonly photos: readonly BlobRef[] }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  return (
    <ul className="photo-list">
      {photos.map((p) => (
        <li key={p.id}>
          <button type="button" className="photo-row" onClick={() => editor.select([{ map: 'blobRefs', id: p.id }])}>
            <PhotoView photo={p} small />
            <span>
              <span className="photo-name">{photoName(p)}</span>
              <span className="photo-of">{sayPlace(plan, p)}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** Keys that bring a photo: by the camera, or one that is there. `on`: what it is of. */
export function PhotoKeys({ on }: { readonly on: string | null }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const [busy, setBusy] = useState(false);
  const add = async (from: From): Promise<void> => {
    if (disabled || busy) return;
    setBusy(true);
    const made = await addPhoto(editor, from, on);
    setBusy(false);
    if (made !== null && on === null) editor.select([{ map: 'blobRefs', id: made }]);
  };
  return (
    <div className="photo-keys">
      <button type="button" className="key slight" aria-disabled={disabled || busy} onClick={() => void add('camera')}>
        <Icon name="photo" size={20} />
        Take a photo
      </button>
      <button type="button" className="key slight" aria-disabled={disabled || busy} onClick={() => void add('device')}>
        Choose one
      </button>
    </div>
  );
}
