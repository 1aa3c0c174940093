import { useId } from 'react';
import { Icon } from '../look/icon.tsx';

interface Props {
  readonly onWhole: () => void;
  readonly onNear: () => void;
  readonly onZoom: (nearer: boolean) => void;
  /** Null where no picture lies under this face. */
  readonly photo: { readonly on: boolean; readonly fade: number } | null;
  readonly onPhoto: (on: boolean) => void;
  readonly onFade: (opacity: number) => void;
}

/** How the face is looked at: all of it, the terminal alone, nearer, further, over a picture. */
export function StageKeys({ onWhole, onNear, onZoom, photo, onPhoto, onFade }: Props) {
  const id = useId();
  return (
    <div className="flue-keys">
      <button type="button" className="key slight" onClick={onWhole}>
        Whole face
      </button>
      <button type="button" className="key slight" onClick={onNear}>
        Terminal
      </button>
      <button type="button" className="key slight" aria-label="Zoom in" onClick={() => onZoom(true)}>
        <Icon name="plus" size={18} />
      </button>
      <button type="button" className="key slight" aria-label="Zoom out" onClick={() => onZoom(false)}>
        <Icon name="minus" size={18} />
      </button>
      {photo && (
        <>
          <button type="button" className="key slight" aria-pressed={photo.on} onClick={() => onPhoto(!photo.on)}>
            Photo
          </button>
          {photo.on && (
            <label className="flue-fade" htmlFor={id}>
              <span>Strength</span>
              <input
                id={id}
                type="range"
                min={0.1}
                max={1}
                step={0.05}
                value={photo.fade}
                onChange={(e) => onFade(Number(e.target.value))}
              />
            </label>
          )}
        </>
      )}
    </div>
  );
}
