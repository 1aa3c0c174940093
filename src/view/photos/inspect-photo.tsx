import { lowerSheet } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { DeleteKey } from '../panels/inspect/delete-key.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { sayPlace } from './photo-list.tsx';
import { PhotoView } from './photo-view.tsx';
import { replacePhoto } from './take-photo.ts';

/** One photo: what it shows, what it is called, what it is of. */
export function InspectPhoto({ id }: { readonly id: string }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  const photo = plan.blobRefs[id];
  if (!photo) return null;
  const pinned = photo.on !== null || photo.pin != null;
  const pin = (): void => {
    if (disabled) return;
    editor.setInHand({ photo: id });
    editor.setTool('photo');
    lowerSheet();
  };
  return (
    <>
      <PhotoView photo={photo} />
      <TextBox
        label="What it shows"
        value={photo.name}
        disabled={disabled}
        onSet={(name) => run('blob.change', { blobRef: id, change: { name } })}
      />
      <p className="inspect-says">{sayPlace(plan, photo)}</p>
      <div className="key-row">
        <button type="button" className="key slight" aria-disabled={disabled} onClick={pin}>
          <Icon name="photo" size={20} />
          {pinned ? 'Pin it elsewhere' : 'Pin it: tap the plan'}
        </button>
        {pinned && (
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => run('blob.pin', { blobRef: id, to: null })}
          >
            Take the pin out
          </button>
        )}
      </div>
      <div className="key-row end-keys">
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => {
            if (!disabled) void replacePhoto(editor, id, 'camera');
          }}
        >
          Take it again
        </button>
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => {
            if (!disabled) void replacePhoto(editor, id, 'device');
          }}
        >
          Choose another
        </button>
        <DeleteKey of={{ map: 'blobRefs', id }} word="photo" />
      </div>
    </>
  );
}
